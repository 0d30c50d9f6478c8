import type { Parsed } from "../model/issue.ts";
import { parsePlacement } from "../model/parsePlacement.ts";
import type { Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import { moveDurationS } from "../motion/duration.ts";
import { type PushSequence, planPushSequence } from "../plan/push/pushSequence.ts";
import { moveWords } from "../report/moveWords.ts";
import { homeAfter } from "../trial/homeAfter.ts";
import { drawPlacement } from "../trial/placement.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProject, readText } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface PushInput {
  readonly project: string | null;
  /** A file of places, or "random". */
  readonly placement: string;
  readonly seed: number;
  readonly json: boolean;
}

/** `wedgeward push`: the quickest way home for balls whose places are known. @returns the exit code */
export function pushCommand(input: PushInput): number {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const project = parsed.value;
  const placed = placementOf(project, input);
  if (!placed.ok) return reject(input.placement, placed.issues, input.json);
  const placement = placed.value;
  const isHome = homeAfter(project, placement);
  const sequence = planPushSequence(
    project,
    placement.map((place, index) => ({ ...place, index })),
    { homeAfter: isHome },
  );
  const delivered = isHome(sequence.moves);
  if (input.json) printJson({ project: project.name, placement, ...sequence, delivered });
  else print(pushText(project, placement, sequence, delivered));
  return FINE;
}

function placementOf(project: Project, { placement, seed }: PushInput): Parsed<readonly PointMm[]> {
  if (placement === "random") return { ok: true, value: drawPlacement(project, seed, 0) };
  const text = readText(placement);
  return text.ok ? parsePlacement(text.value, project) : text;
}

function pushText(
  project: Project,
  placement: readonly PointMm[],
  sequence: PushSequence,
  delivered: readonly boolean[],
): string {
  const { trips, moves, leftOut, timeS, exact } = sequence;
  const drive = project.robot.drive;
  let atS = 0;
  const rows = moves.map((move, i) => {
    const startS = atS;
    atS += moveDurationS(drive, move);
    const trip = trips.findIndex(({ fromMove }) => fromMove === i);
    return [trip < 0 ? "" : `trip ${trip + 1}`, String(i + 1), startS.toFixed(1), moveWords(move)];
  });
  const fetched = trips.map(
    ({ balls, homeS }, i) =>
      `Trip ${i + 1}: ${balls.map((ball) => ballText(ball, placement)).join(", then ")}; home after ${homeS.toFixed(1)} s`,
  );
  return [
    `${project.name}: ${placement.length - leftOut.length} of ${placement.length} balls in ${trips.length} trips, ${timeS.toFixed(1)} s in all`,
    "",
    ...fetched,
    ...leftOut.map((ball) => `No way that keeps it, or no time, for ${ballText(ball, placement)}`),
    "",
    ...(rows.length > 0 ? [tableText([["", "move", "s", ""], ...rows], [false, true, true, false]), ""] : []),
    `Run without drift: ${delivered.filter(Boolean).length} of ${placement.length} balls home.`,
    exact
      ? "No other order, grouping or side of these building blocks is quicker."
      : "There are too many orders to look at all: a quicker one may exist.",
  ].join("\n");
}

function ballText(ball: number, placement: readonly PointMm[]): string {
  const place = placement[ball];
  return `ball ${ball + 1} at ${place?.xMm.toFixed(0)}, ${place?.yMm.toFixed(0)} mm`;
}
