import type { PointMm } from "../../model/zone.ts";
import type { PushField } from "../../plan/push/pushField.ts";
import { outOf100, rangeWords } from "../../report/rateWords.ts";
import { carryMapTexts as t } from "../../texts/english/carryMap.ts";
import { weakStepTexts } from "../../texts/english/weakStep.ts";
import { speedText } from "../../texts/lengths.ts";
import { fixed } from "../../texts/numbers.ts";
import { type CarrySpot, spotsNear } from "../../view/carrySpots.ts";
import { fieldAt } from "../../view/fieldMarks.ts";
import { inRegion, type RegionLook, type ZoneMap } from "../../view/zoneMap.ts";
import type { Layer } from "../state/weakSpots.svelte.ts";
import { placeWords } from "./eventWords.ts";

export function layerWords(layer: Layer): string {
  return layer === "carry" ? t.layer : weakStepTexts.layers[layer];
}

type Looks = Readonly<Record<RegionLook, string>>;

function looksOf(layer: "touched" | "sure"): Looks {
  const { touched, perhaps, blind, surely, never } = weakStepTexts.looks;
  return layer === "touched"
    ? { good: touched, open: perhaps, bad: blind }
    : { good: surely, open: perhaps, bad: never };
}

/** What a hatching means on a layer; "" for layers without hatchings. */
export function lookWords(layer: Layer, look: RegionLook): string {
  return layer === "touched" || layer === "sure" ? looksOf(layer)[look] : "";
}

/** How near the cross has to be to a way: half a step of the arrow keys, and a little more. */
const NEAR_MM = 30;
const MOST_NAMED = 3;

/** What a map says about a place. */
export function mapValueWords(layer: Layer, map: ZoneMap, at: PointMm): string {
  const where = capital(placeWords(at));
  if (map.kind === "heat") {
    const { cellMm, columns, cells } = map.map;
    const cell = cells[Math.floor(at.yMm / cellMm) * columns + Math.floor(at.xMm / cellMm)];
    if (!cell?.rate) return weakStepTexts.tooFew(where);
    return weakStepTexts.getHome(where, outOf100(cell.rate.value), rangeWords(cell.rate));
  }
  if (map.kind === "carry") return `${where}: ${carryWords(map.spots, at)}`;
  if (map.kind === "seconds") return `${where}: ${pushWords(map.field, at)}`;
  const part = map.parts.find(({ region }) => inRegion(region, at.xMm, at.yMm));
  return part ? `${where}: ${lookWords(layer, part.look)}.` : weakStepTexts.noMiddle(where);
}

/** What pushing can do for a ball at a place. */
export function pushWords(field: PushField, at: PointMm): string {
  const { state, seconds } = fieldAt(field, at.xMm, at.yMm);
  switch (state) {
    case "home":
      return weakStepTexts.push(fixed(seconds, 1));
    case "wedge":
      return weakStepTexts.overWedge;
    case "no-push":
      return weakStepTexts.noCleanPush;
    case "dead":
      return weakStepTexts.deadPocket;
    case null:
      return weakStepTexts.noBall;
    default:
      return state satisfies never;
  }
}

/** What can happen on the way past a place to a ball in the pusher. */
function carryWords(spots: readonly CarrySpot[], at: PointMm): string {
  const near = spotsNear(spots, at, NEAR_MM).slice(0, MOST_NAMED);
  if (near.length === 0) return t.nothingHere;
  const lines = near.map(({ move, why, reached, safe, onSpot }) => {
    const where = why === "brakes" ? t.brakesAt(move + 1) : t.turnsAt(move + 1);
    // Down, so that what is said to be kept is kept.
    const speed = (value: number) =>
      onSpot ? t.degPerS(Math.floor((value * 180) / Math.PI)) : speedText(value);
    return safe > 0 ? t.limit(where, speed(reached), speed(safe)) : t.noLimit(where, speed(reached));
  });
  return `${lines.join("; ")}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
