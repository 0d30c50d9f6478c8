import type { Catalogue } from "../catalogue.ts";
import { calibrationTexts } from "./calibration.ts";
import { carryTexts } from "./carry.ts";
import { carryMapTexts } from "./carryMap.ts";
import { changeTexts } from "./change.ts";
import { chartTexts } from "./chart.ts";
import { choiceTexts } from "./choice.ts";
import { clipTexts } from "./clip.ts";
import { coderStepTexts } from "./coderStep.ts";
import { decisionTexts } from "./decision.ts";
import { dialogTexts } from "./dialog.ts";
import { drawingTexts } from "./drawing.ts";
import { editMovesTexts } from "./editMoves.ts";
import { faultTexts } from "./fault.ts";
import { fieldTexts } from "./field.ts";
import { fixTexts } from "./fix.ts";
import { handOnTexts } from "./handOn.ts";
import { heatTexts } from "./heat.ts";
import { helpTexts } from "./help.ts";
import { issueTexts } from "./issue.ts";
import { jsonIssueTexts } from "./jsonIssue.ts";
import { keptTexts } from "./kept.ts";
import { knownBallsTexts } from "./knownBalls.ts";
import { limitTexts } from "./limit.ts";
import { linkTexts } from "./link.ts";
import { listingTexts } from "./listing.ts";
import { lossTexts } from "./loss.ts";
import { mastheadTexts } from "./masthead.ts";
import { moveTexts } from "./move.ts";
import { notebookTexts } from "./notebook.ts";
import { noticeTexts } from "./notice.ts";
import { numberTexts } from "./number.ts";
import { outlineTexts } from "./outline.ts";
import { patternTexts } from "./pattern.ts";
import { picturesTexts } from "./pictures.ts";
import { playerTexts } from "./player.ts";
import { posterTexts } from "./poster.ts";
import { practiceCardTexts } from "./practiceCard.ts";
import { practiceLogTexts } from "./practiceLog.ts";
import { presetTexts } from "./preset.ts";
import { raceTexts } from "./race.ts";
import { rankingTexts } from "./ranking.ts";
import { rateTexts } from "./rate.ts";
import { robotFactTexts } from "./robotFact.ts";
import { robotIssueTexts } from "./robotIssue.ts";
import { robotStepTexts } from "./robotStep.ts";
import { routineSheetTexts } from "./routineSheet.ts";
import { runNoticeTexts } from "./runNotice.ts";
import { sensorsTexts } from "./sensors.ts";
import { sensorWorthTexts } from "./sensorWorth.ts";
import { sheetTexts } from "./sheet.ts";
import { sheetMakerTexts } from "./sheetMaker.ts";
import { sheetProofTexts } from "./sheetProof.ts";
import { shellTexts } from "./shell.ts";
import { shippedTexts } from "./shipped.ts";
import { spreadTexts } from "./spread.ts";
import { stepWordsTexts } from "./stepWords.ts";
import { storedTexts } from "./stored.ts";
import { tableTexts } from "./table.ts";
import { tapeTexts } from "./tape.ts";
import { verdictTexts } from "./verdict.ts";
import { watchTexts } from "./watch.ts";
import { weakTexts } from "./weak.ts";
import { weakStepTexts } from "./weakStep.ts";
import { whyTexts } from "./why.ts";
import { zoneIssueTexts } from "./zoneIssue.ts";
import { zonePictureTexts } from "./zonePicture.ts";
import { zoneStepTexts } from "./zoneStep.ts";

/** All German texts: one chunk, fetched when German is first spoken. */
export const german: Catalogue = {
  calibration: calibrationTexts,
  carry: carryTexts,
  carryMap: carryMapTexts,
  change: changeTexts,
  chart: chartTexts,
  choice: choiceTexts,
  clip: clipTexts,
  coderStep: coderStepTexts,
  decision: decisionTexts,
  dialog: dialogTexts,
  drawing: drawingTexts,
  editMoves: editMovesTexts,
  fault: faultTexts,
  field: fieldTexts,
  fix: fixTexts,
  handOn: handOnTexts,
  heat: heatTexts,
  help: helpTexts,
  issue: issueTexts,
  jsonIssue: jsonIssueTexts,
  kept: keptTexts,
  knownBalls: knownBallsTexts,
  limit: limitTexts,
  link: linkTexts,
  listing: listingTexts,
  loss: lossTexts,
  masthead: mastheadTexts,
  move: moveTexts,
  notebook: notebookTexts,
  notice: noticeTexts,
  number: numberTexts,
  outline: outlineTexts,
  pattern: patternTexts,
  pictures: picturesTexts,
  player: playerTexts,
  poster: posterTexts,
  practiceCard: practiceCardTexts,
  practiceLog: practiceLogTexts,
  preset: presetTexts,
  race: raceTexts,
  ranking: rankingTexts,
  rate: rateTexts,
  robotFact: robotFactTexts,
  robotIssue: robotIssueTexts,
  robotStep: robotStepTexts,
  routineSheet: routineSheetTexts,
  runNotice: runNoticeTexts,
  sensors: sensorsTexts,
  sensorWorth: sensorWorthTexts,
  sheet: sheetTexts,
  sheetMaker: sheetMakerTexts,
  sheetProof: sheetProofTexts,
  shell: shellTexts,
  shipped: shippedTexts,
  spread: spreadTexts,
  stepWords: stepWordsTexts,
  stored: storedTexts,
  table: tableTexts,
  tape: tapeTexts,
  verdict: verdictTexts,
  watch: watchTexts,
  weak: weakTexts,
  weakStep: weakStepTexts,
  why: whyTexts,
  zoneIssue: zoneIssueTexts,
  zonePicture: zonePictureTexts,
  zoneStep: zoneStepTexts,
};
