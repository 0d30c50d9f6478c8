import { spacedOut } from "../../report/charts/spacedOut.ts";
import type { TrialOutcome } from "../../trial/outcome.ts";
import type { Recording } from "../../trial/recording.ts";

/** Room for a ball's mark, its number with a tick or a cross. */
const BALL_PX = 26;
/** Marks of jams nearer to each other than this are one. */
const JAM_PX = 11;
/** So far apart are lines that can still be told apart. */
const LINE_PX = 3;

/** What became of a ball: home for good, or gone for good; a ball still out at the end is lost there and then. */
export interface BallMark {
  readonly ball: number;
  readonly timeS: number;
  readonly isHome: boolean;
  /** Where it is written, beside its time if another has that place. */
  readonly atPx: number;
}

/** @param widthPx of the time bar */
export function ballMarks(
  outcome: Pick<TrialOutcome, "delivered" | "deliveredAtS">,
  recording: Pick<Recording, "durationS" | "events">,
  widthPx: number,
): readonly BallMark[] {
  const marks = outcome.delivered.map((isHome, ball) => ({
    ball,
    isHome,
    timeS: (isHome ? outcome.deliveredAtS[ball] : goneAtS(recording, ball)) ?? recording.durationS,
  }));
  const scale = widthPx / Math.max(recording.durationS, 1e-9);
  const places = spacedOut(
    marks.map(({ timeS }) => timeS * scale),
    BALL_PX,
    widthPx,
  );
  return marks.map((mark, i) => ({ ...mark, atPx: places[i] ?? 0 }));
}

/** When a lost ball left the wedge or the zone for the last time; undefined for balls that never did. */
function goneAtS({ events }: Pick<Recording, "events">, ball: number): number | undefined {
  const leaving = events.filter(
    (event) => event.ball === ball && (event.kind === "off-wedge" || event.kind === "rolled-out"),
  );
  return leaving.at(-1)?.timeS;
}

/** Seconds of jams and stalls; of several that would cover each other, the first. */
export function jamMarks(
  recording: Pick<Recording, "durationS" | "events">,
  widthPx: number,
): readonly number[] {
  const times = recording.events.filter(({ kind }) => kind === "jam" || kind === "stall");
  return thinned(
    times.map(({ timeS }) => timeS),
    (JAM_PX * recording.durationS) / widthPx,
  );
}

/** Seconds at which moves begin; where they follow each other too fast, fewer. */
export function moveMarks(
  recording: Pick<Recording, "durationS" | "moveStartS">,
  widthPx: number,
): readonly number[] {
  return thinned(Array.from(recording.moveStartS), (LINE_PX * recording.durationS) / widthPx);
}

/** Rising numbers without those that follow the last kept one by less than a gap. */
function thinned(rising: readonly number[], gap: number): readonly number[] {
  let last = Number.NEGATIVE_INFINITY;
  return rising.filter((each) => {
    if (each - last < gap) return false;
    last = each;
    return true;
  });
}
