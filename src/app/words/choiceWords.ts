import type { BallKind } from "../../model/ball.ts";
import { BALL_BUILDS, CORNERS, DELIVERED_RULES, WALLS, WEDGE_PROFILES } from "../../model/choices.ts";
import { PRESET_IDS, type PresetId } from "../../model/presets.ts";
import type { DeliveredRule, Layout } from "../../model/rules.ts";
import type { Corner, Wall, WedgeProfile } from "../../model/zone.ts";
import { choiceTexts as t } from "../../texts/english/choice.ts";
import { moveTexts } from "../../texts/english/move.ts";
import { presetTexts } from "../../texts/english/preset.ts";
import { wallWords } from "./fieldWords.ts";

/** A word that a file may hold where there is a choice, and how people are asked for it. */
export interface Option<T extends string> {
  readonly value: T;
  readonly words: string;
}

type Options<T extends string> = readonly Option<T>[];

const optionsOf = <T extends string>(values: readonly T[], words: (value: T) => string): Options<T> =>
  values.map((value) => ({ value, words: words(value) }));

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const wallOptions = (): Options<Wall> => optionsOf(WALLS, (wall) => capital(wallWords(wall)));

export const cornerOptions = (): Options<Corner> =>
  optionsOf(CORNERS, (corner) => capital(moveTexts.corners[corner]));

export const profileOptions = (): Options<WedgeProfile> =>
  optionsOf(WEDGE_PROFILES, (profile) => t.profile[profile]);

export const deliveredOptions = (): Options<DeliveredRule> =>
  optionsOf(DELIVERED_RULES, (rule) => t.delivered[rule]);

export const buildOptions = (): Options<BallKind["build"]> =>
  optionsOf(BALL_BUILDS, (build) => t.build[build]);

/** A ball of one's own is one that carries no preset's name. */
export const ballOptions = (): Options<PresetId | "own"> => [
  ...optionsOf(PRESET_IDS, (preset) => presetTexts.balls[preset]),
  { value: "own", words: t.ownBall },
];

export const layoutOptions = (): Options<Layout["kind"]> =>
  optionsOf(["random", "fixed"], (kind) => t.layout[kind]);
