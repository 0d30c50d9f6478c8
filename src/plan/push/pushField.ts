import type { BallKind } from "../../model/ball.ts";
import type { Project } from "../../model/project.ts";
import { FieldSolver } from "./field.kernel.ts";
import { discFreeWay } from "./keepOut.kernel.ts";
import { type Pockets, pocketsOf } from "./pockets.ts";
import { fieldBall, type PushSetup, pushSetup } from "./setup.ts";

/** What is known of a place: a chain of pushes brings a ball home; it is on the wedge; no chain does; the robot cannot even touch it. */
export const PLACE_STATES = ["home", "wedge", "no-push", "dead"] as const;
export type PlaceState = (typeof PLACE_STATES)[number];

/**
 * The push field of a project as plain numbers, for any worker or page: over the places where a ball's centre can lie, the
 * seconds that the cheapest chain of pushes takes to bring it home once the robot is behind it.
 */
export interface PushField {
  readonly radiusMm: number;
  /** Places: columns × rows from (radius, radius), `stepXMm` and `stepYMm` apart, row by row. */
  readonly columns: number;
  readonly rows: number;
  readonly stepXMm: number;
  readonly stepYMm: number;
  /** Seconds home; 0 on the wedge, Infinity where no chain is known. */
  readonly seconds: Float32Array;
  /** Direction of the first push, steps of 5° from the x axis; 255: none. */
  readonly direction: Uint8Array;
  /** Index in PLACE_STATES; 255 where no ball can lie (in a keep-out). */
  readonly state: Uint8Array;
  readonly summary: PushSummary;
}

/** Areas in mm² of places of the ball's centre. Those by states are sums over places: right to about half a place along each border. */
export interface PushSummary {
  readonly homeMm2: number;
  readonly wedgeMm2: number;
  readonly noPushMm2: number;
  /** Bounds of the area that is certainly dead (pockets.ts). */
  readonly deadLowMm2: number;
  readonly deadHighMm2: number;
  /** Mean over the home area, and the slowest place of it, s. */
  readonly meanSeconds: number;
  readonly slowestSeconds: number;
}

/** A field with the solver that made it, for planning on. */
export interface SolvedField {
  readonly field: PushField;
  readonly solver: FieldSolver;
  readonly pockets: Pockets;
}

/** The field for the largest ball of a project, with no more room kept than the robot needs. */
export function pushField(project: Project): PushField {
  const { field, solver } = solvePushField(project);
  solver.release();
  return field;
}

/**
 * @param kind the ball the field is for
 * @param clearanceMm gap the robot keeps to walls: 0 for what is just possible
 */
export function solvePushField(
  project: Project,
  kind: BallKind = fieldBall(project),
  clearanceMm = 0,
): SolvedField {
  const setup = pushSetup(project, kind, clearanceMm);
  const solver = new FieldSolver(setup);
  solver.solve();
  const pockets = pocketsOf(project, setup.radius);
  const state = statesOf(solver, pockets);
  const field = {
    radiusMm: setup.radius,
    columns: setup.columns,
    rows: setup.rows,
    stepXMm: setup.stepX,
    stepYMm: setup.stepY,
    seconds: solver.best,
    direction: solver.bestDirection,
    state,
    summary: summaryOf(setup, solver.best, state, pockets),
  };
  return { field, solver, pockets };
}

function statesOf(solver: FieldSolver, pockets: Pockets): Uint8Array {
  const { setup, best } = solver;
  return Uint8Array.from(best, (seconds, cell) => {
    const x = solver.xOf(cell);
    const y = solver.yOf(cell);
    if (setup.keepOuts.length > 0 && discFreeWay(setup.keepOuts, setup.radius, x, y, 1, 0, 1) < 0) return 255;
    if (seconds === 0) return PLACE_STATES.indexOf("wedge");
    if (seconds < Number.POSITIVE_INFINITY) return PLACE_STATES.indexOf("home");
    return PLACE_STATES.indexOf(pockets.isDead(x, y) ? "dead" : "no-push");
  });
}

function summaryOf(
  setup: PushSetup,
  seconds: Float32Array,
  state: Uint8Array,
  pockets: Pockets,
): PushSummary {
  const areas = PLACE_STATES.map(() => 0);
  let weighted = 0;
  let slowestSeconds = 0;
  state.forEach((code, cell) => {
    if (code === 255) return;
    const area = areaOf(setup, cell);
    areas[code] = (areas[code] ?? 0) + area;
    if (PLACE_STATES[code] !== "home") return;
    const time = seconds[cell] ?? 0;
    weighted += area * time;
    slowestSeconds = Math.max(slowestSeconds, time);
  });
  const [homeMm2 = 0, wedgeMm2 = 0, noPushMm2 = 0] = areas;
  return {
    homeMm2,
    wedgeMm2,
    noPushMm2,
    deadLowMm2: pockets.deadLowMm2,
    deadHighMm2: pockets.deadHighMm2,
    meanSeconds: homeMm2 > 0 ? weighted / homeMm2 : 0,
    slowestSeconds,
  };
}

/** What a place stands for: half as much along a wall, a quarter in a corner. */
function areaOf(setup: PushSetup, cell: number): number {
  const column = cell % setup.columns;
  const row = (cell - column) / setup.columns;
  const halfX = column === 0 || column === setup.columns - 1 ? 0.5 : 1;
  const halfY = row === 0 || row === setup.rows - 1 ? 0.5 : 1;
  return halfX * halfY * setup.stepX * setup.stepY;
}
