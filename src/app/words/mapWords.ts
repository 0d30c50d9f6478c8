import type { PointMm } from "../../model/zone.ts";
import { outOf100, rangeWords } from "../../report/rateWords.ts";
import { inRegion, type RegionLook, type ZoneMap } from "../../view/zoneMap.ts";
import type { Layer } from "../state/weakSpots.svelte.ts";
import { placeWords } from "./eventWords.ts";

export const LAYER_WORDS: Readonly<Record<Layer, string>> = {
  none: "No map",
  heat: "How often a ball that starts here gets home",
  touched: "What the pusher touches without drift",
  sure: "What it touches whatever the drift",
};

const LOOK_WORDS: Readonly<Record<Exclude<Layer, "none" | "heat">, Readonly<Record<RegionLook, string>>>> = {
  touched: { good: "touched", open: "perhaps touched", bad: "blind: not touched" },
  sure: { good: "surely touched", open: "perhaps touched", bad: "never touched" },
};

/** What a hatching means on a layer; "" for layers without hatchings. */
export function lookWords(layer: Layer, look: RegionLook): string {
  return layer === "touched" || layer === "sure" ? LOOK_WORDS[layer][look] : "";
}

/** What a map says about a place. */
export function mapValueWords(layer: Layer, map: ZoneMap, at: PointMm): string {
  const where = capital(placeWords(at));
  if (map.kind === "heat") {
    const { cellMm, columns, cells } = map.map;
    const cell = cells[Math.floor(at.yMm / cellMm) * columns + Math.floor(at.xMm / cellMm)];
    if (!cell?.rate) return `${where}: too few balls start here to say.`;
    return `${where}: ${outOf100(cell.rate.value)} of 100 balls that start here get home (${rangeWords(cell.rate)}).`;
  }
  const part = map.parts.find(({ region }) => inRegion(region, at.xMm, at.yMm));
  return part ? `${where}: ${lookWords(layer, part.look)}.` : `${where}: no ball’s middle can lie here.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
