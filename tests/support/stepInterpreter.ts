import type { Move } from "../../src/model/routine.ts";
import { RAD_PER_DEG } from "../../src/model/units.ts";
import type { ListingLanguage } from "../../src/report/coder/listing.ts";

/** Tiny interpreters for what the tool hands to a coder: each reads the text alone and gives the moves a robot would make. */

/** A call of one of the functions the team writes. */
function moveOfCall(name: string, args: readonly number[]): Move {
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN, d = Number.NaN, e = Number.NaN] = args;
  switch (name) {
    case "drive":
      return { kind: "drive", distanceMm: a, speedMmPerS: b };
    case "turn":
      return { kind: "turn", angleRad: a * RAD_PER_DEG, rateRadPerS: b * RAD_PER_DEG };
    case "curve":
      return { kind: "arc", distanceMm: a, angleRad: b * RAD_PER_DEG, speedMmPerS: c };
    case "drive_to_wall":
      return { kind: "toWall", distanceMm: a, overrunMm: b, speedMmPerS: c };
    case "drive_beside":
      return { kind: "drive", distanceMm: a, speedMmPerS: b, beside: { sensor: c - 1, readsMm: d } };
    case "drive_to_wall_beside": {
      const beside = { sensor: d - 1, readsMm: e };
      return { kind: "toWall", distanceMm: a, overrunMm: b, speedMmPerS: c, beside };
    }
    case "wait":
      return { kind: "wait", durationS: a };
    default:
      throw new Error(`no such function: ${name}`);
  }
}

/** The calls in the body of `routine`, remarks left out. */
function program(text: string): Move[] {
  const body = text.slice(text.search(/^(def routine\(\):|void routine\(void\) \{)$/m));
  return body
    .split("\n")
    .slice(1)
    .map((line) => line.replace(/(#|\/\/).*$/, "").trim())
    .filter((line) => line !== "" && line !== "}")
    .map((line) => {
      const call = /^(\w+)\(([^()]*)\);?$/.exec(line);
      if (!call) throw new Error(`not a call: ${line}`);
      return moveOfCall(call[1]!, call[2]!.split(",").map(Number));
    });
}

const NUMBER = "([0-9.]+)";
const SENTENCES: readonly (readonly [RegExp, (words: readonly string[]) => Move])[] = [
  [
    new RegExp(`^drive (forward|backward) ${NUMBER} mm at ${NUMBER} mm/s$`),
    ([way, mm, speed]) => moveOfCall("drive", [signed(way, mm), Number(speed)]),
  ],
  [
    new RegExp(`^turn (left|right) ${NUMBER} deg at ${NUMBER} deg/s$`),
    ([side, deg, rate]) => moveOfCall("turn", [signed(side, deg), Number(rate)]),
  ],
  [
    new RegExp(`^curve (left|right) ${NUMBER} deg over ${NUMBER} mm (forward|backward) at ${NUMBER} mm/s$`),
    ([side, deg, mm, way, speed]) => moveOfCall("curve", [signed(way, mm), signed(side, deg), Number(speed)]),
  ],
  [
    new RegExp(
      `^drive (forward|backward) to the wall ${NUMBER} mm and push on ${NUMBER} mm at ${NUMBER} mm/s$`,
    ),
    ([way, mm, extra, speed]) =>
      moveOfCall("drive_to_wall", [signed(way, mm), signed(way, extra), Number(speed)]),
  ],
  [new RegExp(`^wait ${NUMBER} s$`), ([seconds]) => moveOfCall("wait", [Number(seconds)])],
];

function signed(word: string | undefined, number: string | undefined): number {
  return Number(number) * (word === "backward" || word === "right" ? -1 : 1);
}

function sentences(text: string): Move[] {
  const lines = [...text.matchAll(/^ *\d+\. (.*)$/gm)].map((match) => match[1]!);
  return lines.map((text) => {
    const [, line = text, sensor, mm] =
      /^(.*), keeping distance sensor (\d+) at ([0-9.]+) mm$/.exec(text) ?? [];
    const beside =
      sensor === undefined ? {} : { beside: { sensor: Number(sensor) - 1, readsMm: Number(mm) } };
    for (const [pattern, make] of SENTENCES) {
      const match = pattern.exec(line);
      if (match) return { ...make(match.slice(1)), ...beside } as Move;
    }
    throw new Error(`not understood: ${line}`);
  });
}

export function movesOfListing(text: string, language: ListingLanguage): Move[] {
  return language === "pseudo" ? sentences(text) : program(text);
}

/** The params of each function, in order, as the CSV's columns name them. */
const PARAMS: Readonly<Record<string, readonly string[]>> = {
  drive: ["mm", "mm_per_s"],
  turn: ["deg", "deg_per_s"],
  curve: ["mm", "deg", "mm_per_s"],
  drive_to_wall: ["mm", "extra_mm", "mm_per_s"],
  drive_beside: ["mm", "mm_per_s", "by_sensor", "keep_mm"],
  drive_to_wall_beside: ["mm", "extra_mm", "mm_per_s", "by_sensor", "keep_mm"],
  wait: ["s"],
};

function csvRows(text: string): ReadonlyMap<string, string>[] {
  const [header = "", ...lines] = text.split("\n");
  const names = header.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    return new Map(names.map((name, i) => [name, cells[i] ?? ""]));
  });
}

export function movesOfCsv(text: string): Move[] {
  return csvRows(text).map((row) => {
    const name = row.get("do") ?? "";
    return moveOfCall(name, PARAMS[name]?.map((param) => Number(row.get(param) || Number.NaN)) ?? []);
  });
}

export interface WheelRow {
  readonly leftDeg: number;
  readonly rightDeg: number;
  readonly wheelDegPerS: number;
}

/** Wheel degrees of every step of the CSV on which wheels turn. */
export function wheelsOfCsv(text: string): WheelRow[] {
  return csvRows(text)
    .filter((row) => row.get("left_wheel_deg") !== "")
    .map((row) => ({
      leftDeg: Number(row.get("left_wheel_deg")),
      rightDeg: Number(row.get("right_wheel_deg")),
      wheelDegPerS: Number(row.get("wheel_deg_per_s")),
    }));
}

/** What a robot of these measures is commanded when its wheels are told to turn so far: a curve, or a turn on the spot. */
export function moveOfWheels(
  { leftDeg, rightDeg, wheelDegPerS }: WheelRow,
  gaugeMm: number,
  wheelDiameterMm: number,
): Move {
  const mm = (deg: number): number => (deg / 360) * Math.PI * wheelDiameterMm;
  const [left, right] = [mm(leftDeg), mm(rightDeg)];
  const angleRad = (right - left) / gaugeMm;
  const distanceMm = (left + right) / 2;
  if (Math.abs(distanceMm) < 1e-3) return { kind: "turn", angleRad, rateRadPerS: 1 };
  return { kind: "arc", distanceMm, angleRad, speedMmPerS: mm(wheelDegPerS) };
}
