import { BALL_BUILDS, CORNERS, DELIVERED_RULES, WALLS, WEDGE_PROFILES } from "../../model/choices.ts";
import { BALL_PRESETS, PRESET_IDS } from "../../model/presets.ts";
import { wallWords } from "./fieldWords.ts";

/** The words a file may hold where there is a choice, and how people are asked. */
interface Option<T extends string> {
  readonly value: T;
  readonly words: string;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const WALL_OPTIONS = WALLS.map((value) => ({ value, words: capital(wallWords(value)) }));
export const CORNER_OPTIONS = CORNERS.map((value) => ({ value, words: capital(value.replace("-", " ")) }));

const PROFILE_WORDS = {
  flat: "A flat mark on the floor",
  ramp: "A ramp that rises to the corner",
  shelf: "A short ramp, then level",
  tray: "A lip, then falling to the corner",
} as const;
export const PROFILE_OPTIONS = WEDGE_PROFILES.map((value) => ({ value, words: PROFILE_WORDS[value] }));

const DELIVERED_WORDS = {
  centre: "when its middle is over the wedge",
  wholly: "when all of it is over the wedge",
} as const;
export const DELIVERED_OPTIONS = DELIVERED_RULES.map((value) => ({ value, words: DELIVERED_WORDS[value] }));

const BUILD_WORDS = { solid: "solid", hollow: "hollow" } as const;
export const BUILD_OPTIONS = BALL_BUILDS.map((value) => ({ value, words: BUILD_WORDS[value] }));

/** A ball of one's own is one that carries no preset's name. */
export const BALL_OPTIONS: readonly Option<string>[] = [
  ...PRESET_IDS.map((value) => ({ value, words: BALL_PRESETS[value].name })),
  { value: "own", words: "A ball of your own" },
];

export const LAYOUT_OPTIONS: readonly Option<"random" | "fixed">[] = [
  { value: "random", words: "at random, by a rule" },
  { value: "fixed", words: "always on the same spots" },
];
