import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { shippedProject } from "./projectFiles.ts";

/** The runs whose trajectory hashes are kept in tests/golden/hashes.json: seeds × projects × routines. */
export interface GoldenRun {
  /** Its key in the file. */
  readonly key: string;
  readonly project: Project;
  readonly routine: Routine;
  readonly seed: number;
}

export const GOLDEN_TRIALS = 40;
const SEEDS = [1, 9007199254740991];

/** Back and forth through the zone with every kind of move, good for nothing but meeting balls, walls and the wedge. */
function zigzag(project: Project): Routine {
  const { topSpeedMmPerS: speedMmPerS, turnRateRadPerS: rateRadPerS } = project.robot.drive;
  const overrunMm = project.settings.overrunMm;
  const leg = (side: number): Move[] => [
    { kind: "toWall", distanceMm: project.zone.heightMm - 250, overrunMm, speedMmPerS },
    { kind: "drive", distanceMm: -120, speedMmPerS },
    { kind: "turn", angleRad: 1.4 * side, rateRadPerS },
    { kind: "arc", distanceMm: 260, angleRad: -0.6 * side, speedMmPerS },
    { kind: "wait", durationS: 0.3 },
    { kind: "drive", distanceMm: 200, speedMmPerS: speedMmPerS / 2 },
    { kind: "turn", angleRad: 1.2 * side, rateRadPerS },
  ];
  return {
    id: "zigzag",
    pattern: "own",
    label: "zigzag",
    params: {},
    moves: [...leg(-1), ...leg(-1), ...leg(1), ...leg(-1), ...leg(1), ...leg(-1)],
  };
}

/** The first routine of the field's own list that is wanted. */
function firstOf(project: Project, isWanted: (routine: Routine) => boolean): Routine {
  const found = generateRoutines(project).find(isWanted);
  if (found === undefined) throw new Error(`no such routine for ${project.name}`);
  return found;
}

const closing = (routine: Routine): boolean => routine.id.startsWith("close-");
const deciding = (routine: Routine): boolean => routine.program !== undefined;
const swinging = (routine: Routine): boolean => routine.moves.some(({ kind }) => kind === "arms");

/** By field: what of its own list, which takes seconds to make, it is run with beside the zigzag. */
const FIELDS: readonly (readonly [field: string, isWanted: ((routine: Routine) => boolean) | null])[] = [
  ["usual-zone", closing],
  ["tray-corner", null],
  ["ramp-corner", null],
  ["five-mixed-balls", null],
  ["pillar-zone", null],
  ["looking-robot", deciding],
  ["swinging-arms", swinging],
];

let known: readonly GoldenRun[] | undefined;

export function goldenRuns(): readonly GoldenRun[] {
  known ??= FIELDS.flatMap(([field, isWanted]) => {
    const project = shippedProject(`${field}.json`);
    const routines = [zigzag(project), ...(isWanted === null ? [] : [firstOf(project, isWanted)])];
    return routines.flatMap((routine) =>
      SEEDS.map((seed) => ({ key: `${field}, ${routine.id}, seed ${seed}`, project, routine, seed })),
    );
  });
  return known;
}
