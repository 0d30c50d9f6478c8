/** Every topic and the shape of its texts, as the English ones have it. Types only: nothing of it is loaded. */
export interface Catalogue {
  readonly calibration: typeof import("./english/calibration.ts").calibrationTexts;
  readonly carry: typeof import("./english/carry.ts").carryTexts;
  readonly decision: typeof import("./english/decision.ts").decisionTexts;
  readonly fix: typeof import("./english/fix.ts").fixTexts;
  readonly limit: typeof import("./english/limit.ts").limitTexts;
  readonly loss: typeof import("./english/loss.ts").lossTexts;
  readonly knownBalls: typeof import("./english/knownBalls.ts").knownBallsTexts;
  readonly carryMap: typeof import("./english/carryMap.ts").carryMapTexts;
  readonly number: typeof import("./english/number.ts").numberTexts;
  readonly zoneStep: typeof import("./english/zoneStep.ts").zoneStepTexts;
  readonly masthead: typeof import("./english/masthead.ts").mastheadTexts;
  readonly move: typeof import("./english/move.ts").moveTexts;
  readonly outline: typeof import("./english/outline.ts").outlineTexts;
  readonly race: typeof import("./english/race.ts").raceTexts;
  readonly rate: typeof import("./english/rate.ts").rateTexts;
  readonly sensorWorth: typeof import("./english/sensorWorth.ts").sensorWorthTexts;
  readonly shell: typeof import("./english/shell.ts").shellTexts;
  readonly spread: typeof import("./english/spread.ts").spreadTexts;
  readonly verdict: typeof import("./english/verdict.ts").verdictTexts;
  readonly weak: typeof import("./english/weak.ts").weakTexts;
  readonly heat: typeof import("./english/heat.ts").heatTexts;
  readonly sheetProof: typeof import("./english/sheetProof.ts").sheetProofTexts;
  readonly poster: typeof import("./english/poster.ts").posterTexts;
}
