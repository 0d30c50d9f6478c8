import { CORNERS, WALLS, WEDGE_PROFILES } from "./choices.ts";
import type { Findings } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { DOORWAY_LIMITS, RECT_LIMITS, WALL_LIMITS, WEDGE_LIMITS, ZONE_LIMITS } from "./limits.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import type { Doorway, RectMm, Wedge, Zone } from "./zone.ts";

/** More keep-outs, or forbidden regions, than any zone has. */
export const MAX_RECTS = 16;

export function parseZone(fields: Fields, findings: Findings): Zone {
  const size = fields.numbers(ZONE_LIMITS);
  const walls = fields.child("walls", "optional");
  const surface = walls.numbers(WALL_LIMITS);
  walls.done();
  const zone: Zone = {
    ...size,
    walls: surface,
    doorway: parseDoorway(fields.child("doorway", "required")),
    wedge: parseWedge(fields.child("wedge", "required")),
    keepOuts: fields
      .list("keepOuts", { max: MAX_RECTS })
      .map((value, i) => parseRect(value, `${fields.pathOf("keepOuts")}[${i}]`, findings)),
  };
  fields.done();
  return zone;
}

function parseDoorway(fields: Fields): Doorway {
  const doorway: Doorway = {
    wall: fields.choice("wall", WALLS) ?? "left",
    ...fields.numbers(DOORWAY_LIMITS),
  };
  fields.done();
  return doorway;
}

function parseWedge(fields: Fields): Wedge {
  const corner = fields.choice("corner", CORNERS) ?? "upper-right";
  const profile = fields.choice("profile", WEDGE_PROFILES, "flat") ?? "flat";
  const wedge: Wedge = { corner, profile, ...fields.numbers(WEDGE_LIMITS) };
  fields.done();
  return wedge;
}

/** A rectangle in a list; (xMm, yMm) is its lower left corner. */
export function parseRect(value: JsonValue, path: string, findings: Findings): RectMm {
  const fields = fieldsOf(value, path, findings);
  const rect: RectMm = fields.numbers(RECT_LIMITS);
  fields.done();
  return rect;
}
