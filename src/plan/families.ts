import { CAGED } from "./caged.ts";
import { CARRIED_LANES } from "./carriedLanes.ts";
import { CLOSING_LANES } from "./closingLanes.ts";
import { DIAGONAL } from "./diagonal.ts";
import type { Family } from "./family.ts";
import { FAN } from "./fan.ts";
import { HERD } from "./herd.ts";
import { MIXTURE } from "./mixture.ts";
import { RINGS_IN, RINGS_OUT, WALL_LOOP } from "./rings.ts";
import { TO_AND_FRO } from "./toAndFro.ts";

/** Every pattern, in the order they are listed. */
export const FAMILIES: readonly Family[] = [
  HERD,
  FAN,
  RINGS_IN,
  RINGS_OUT,
  CARRIED_LANES,
  CLOSING_LANES,
  TO_AND_FRO,
  DIAGONAL,
  MIXTURE,
  WALL_LOOP,
  CAGED,
];
