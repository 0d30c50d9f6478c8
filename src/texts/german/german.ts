import type { Catalogue } from "../catalogue.ts";
import { calibrationTexts } from "./calibration.ts";
import { carryTexts } from "./carry.ts";
import { carryMapTexts } from "./carryMap.ts";
import { decisionTexts } from "./decision.ts";
import { fixTexts } from "./fix.ts";
import { heatTexts } from "./heat.ts";
import { keptTexts } from "./kept.ts";
import { knownBallsTexts } from "./knownBalls.ts";
import { limitTexts } from "./limit.ts";
import { lossTexts } from "./loss.ts";
import { mastheadTexts } from "./masthead.ts";
import { moveTexts } from "./move.ts";
import { numberTexts } from "./number.ts";
import { outlineTexts } from "./outline.ts";
import { posterTexts } from "./poster.ts";
import { raceTexts } from "./race.ts";
import { rateTexts } from "./rate.ts";
import { robotFactTexts } from "./robotFact.ts";
import { robotStepTexts } from "./robotStep.ts";
import { sensorsTexts } from "./sensors.ts";
import { sensorWorthTexts } from "./sensorWorth.ts";
import { sheetProofTexts } from "./sheetProof.ts";
import { shellTexts } from "./shell.ts";
import { spreadTexts } from "./spread.ts";
import { verdictTexts } from "./verdict.ts";
import { weakTexts } from "./weak.ts";
import { whyTexts } from "./why.ts";
import { zoneStepTexts } from "./zoneStep.ts";

/** All German texts: one chunk, fetched when German is first spoken. */
export const german: Catalogue = {
  why: whyTexts,
  calibration: calibrationTexts,
  carry: carryTexts,
  decision: decisionTexts,
  fix: fixTexts,
  limit: limitTexts,
  loss: lossTexts,
  knownBalls: knownBallsTexts,
  carryMap: carryMapTexts,
  number: numberTexts,
  zoneStep: zoneStepTexts,
  masthead: mastheadTexts,
  move: moveTexts,
  outline: outlineTexts,
  race: raceTexts,
  rate: rateTexts,
  sensorWorth: sensorWorthTexts,
  robotFact: robotFactTexts,
  robotStep: robotStepTexts,
  sensors: sensorsTexts,
  shell: shellTexts,
  spread: spreadTexts,
  verdict: verdictTexts,
  weak: weakTexts,
  heat: heatTexts,
  sheetProof: sheetProofTexts,
  poster: posterTexts,
  kept: keptTexts,
};
