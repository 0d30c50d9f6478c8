import type { Routine } from "../../model/routine.ts";
import { secondsWords } from "../../report/lengthWords.ts";
import { playerTexts } from "../../texts/english/player.ts";
import { ballAt, moveAt, robotAt } from "../../trial/playback.ts";
import { ballMark } from "../../view/ballMark.ts";
import { isTrouble } from "../../view/trouble.ts";
import type { ViewRun } from "../../view/zoneView.ts";
import { eventWords, placeWords } from "./eventWords.ts";
import { moveWords } from "./moveWords.ts";

/** The move under way: "Move 5 of 23: drive 600 mm". */
export function moveNowWords(routine: Routine, run: ViewRun, timeS: number): string {
  const index = moveAt(run.recording, timeS);
  const moves = run.recording.executed ?? routine.moves;
  const move = moves[index];
  if (timeS >= run.recording.durationS) return playerTexts.endsAfter(secondsWords(run.recording.durationS));
  if (!move) return playerTexts.allMovesDone;
  return playerTexts.moveNow(index + 1, moves.length, moveWords(move));
}

/** As near as this a trouble is told, s: a jump to it ends a little before. */
const NEAR_S = 0.6;

/** What goes wrong about now, as a sentence each; empty where nothing does. */
export function troubleNowWords(run: ViewRun, timeS: number): string {
  const near = run.recording.events.filter(
    (event) => isTrouble(event) && Math.abs(event.timeS - timeS) <= NEAR_S,
  );
  return near.map((event) => `${eventWords(event)}.`).join(" ");
}

/** The whole picture at a second, for people who do not see the drawing. */
export function momentWords(routine: Routine, run: ViewRun, timeS: number): string {
  const balls = run.outcome.delivered.map((_, ball) => {
    const mark = ballMark(run.outcome, run.recording, ball, timeS);
    const place = placeWords(ballAt(run.recording, ball, timeS));
    return playerTexts.ballNow(ball + 1, playerTexts.marks[mark], place);
  });
  const robot = playerTexts.robotNow(placeWords(robotAt(run.recording, timeS)));
  const trouble = troubleNowWords(run, timeS);
  const now = moveNowWords(routine, run, timeS);
  return [`${secondsWords(timeS)}.`, now, ...(trouble ? [trouble] : []), robot, ...balls].join(" ");
}
