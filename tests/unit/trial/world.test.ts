import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { HingedShape } from "../../../src/model/robot.ts";
import type { Move } from "../../../src/model/routine.ts";
import type { DistanceSensor } from "../../../src/model/sensor.ts";
import { SENSOR_PRESETS } from "../../../src/model/sensorPresets.ts";
import * as armsKernel from "../../../src/trial/arms.kernel.ts";
import * as ballsKernel from "../../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import * as contactKernel from "../../../src/trial/contact.kernel.ts";
import { runFamilyBatch } from "../../../src/trial/family.ts";
import * as resultKernel from "../../../src/trial/result.kernel.ts";
import * as robotKernel from "../../../src/trial/robot.kernel.ts";
import { driveOn, openRun } from "../../../src/trial/run.kernel.ts";
import { placementOf, runBatch } from "../../../src/trial/run.ts";
import * as wakeKernel from "../../../src/trial/wake.kernel.ts";
import * as wedgeKernel from "../../../src/trial/wedge.kernel.ts";
import { withMoves } from "../../../src/trial/withMoves.ts";
import { KeptWorld } from "../../../src/trial/world.kernel.ts";
import { interrupted, uninterrupted } from "../../support/interrupted.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const SEED = 5;

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 180 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 2 });
const toWall = (distanceMm: number): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm: 40,
  speedMmPerS: 180,
});
const arms = (to: "open" | "closed", durationS = 0.9): Move => ({ kind: "arms", to, durationS });
const beside = (distanceMm: number, readsMm = 150): Move => ({
  ...drive(distanceMm),
  kind: "drive",
  distanceMm,
  speedMmPerS: 180,
  beside: { sensor: 1, readsMm },
});
const pause: Move = { kind: "wait", durationS: 0.4 };

const TRUNK = [drive(300), turn(0.9), drive(250), pause, turn(-1.6), drive(350), turn(1.5), drive(200)];
const armed = (lists: readonly Move[]) =>
  lists.flatMap((move, i) => [move, arms(i % 2 === 0 ? "closed" : "open", i % 3 === 2 ? 0.2 : 0.9)]);
const BESIDE = [drive(250), toWall(900), drive(-150), turn(-1.57), beside(250), beside(200), turn(1.57)];

const swinging = shippedProject("swinging-arms.json");
const looking = shippedProject("looking-robot.json");
const eye: DistanceSensor = { ...SENSOR_PRESETS["ultrasonic-echo"], headingRad: Math.PI / 2 };
const sided = (sensors: Project["robot"]["sensors"]): Project => ({
  ...looking,
  robot: { ...looking.robot, sensors },
});

/** What has state of its own on the way: hinged arms, a gyro, a sensor that steers by a wall. */
const SCENES: readonly (readonly [string, Project, readonly Move[], readonly Move[]])[] = [
  ["arms that swing", swinging, armed(TRUNK.slice(0, 6)), armed([drive(100), ...TRUNK])],
  [
    "a gyro and a wall",
    sided([SENSOR_PRESETS["rate-gyro"], eye]),
    [...BESIDE, ...TRUNK, ...BESIDE],
    [...TRUNK, ...BESIDE, beside(100, 170), ...TRUNK, ...BESIDE, ...BESIDE],
  ],
  ["encoders and a wall", sided([eye, eye]), [...BESIDE, ...BESIDE], [...TRUNK, ...BESIDE, ...BESIDE]],
];

describe.each(SCENES)("%s", (_, project, moves, others) => {
  const plan = compileTrial(project, routineOf(moves));
  const other = withMoves(plan, routineOf(others));

  it("goes on as if nothing had been when another run has gone through the world after each move", () => {
    for (const index of [0, 1])
      expect(interrupted(plan, other, SEED, index)).toEqual(uninterrupted(plan, SEED, index));
  });

  it("in a family comes to what each comes to alone", () => {
    const lists = [moves, others, [...moves.slice(0, 5), ...others], moves.slice(0, 3), moves];
    const alone = lists.map((list) => runBatch(compileTrial(project, routineOf(list)), SEED, 0, 3));
    const plans = lists.map((list) => withMoves(plan, routineOf(list)));
    expect(runFamilyBatch(plans, SEED, 0, 3)).toEqual(alone);
  });
});

describe("a family", () => {
  it("that was made of plans of their own is refused", () => {
    const plans = [0, 1].map(() => compileTrial(swinging, routineOf(TRUNK)));
    expect(() => runFamilyBatch(plans, SEED, 0, 1)).toThrow(RangeError);
    expect(runFamilyBatch([], SEED, 0, 1)).toEqual([]);
  });
});

/** State of the kernels that lives on from move to move, which a kept world holds. */
const KEPT =
  words(`bx by vx vy sx sy mode inHand awake byRobot stands pairBits holdNx holdNy onWedge lean touched home homeAtS wasHome
  wasJammed jamX jamY jamS jamMove touchS touchMove leftS leftMove robot result hash arms`);
/** The footprint of hinged arms, which goes by their angle. */
const BY_ANGLE = words("shape edgeX edgeY edgeDx edgeDy edgeLen convex swing");
/** Constants of the plan and the trial, and what only a program writes. */
const CONSTANT =
  words(`radius mass inertia rollDecel rollCoeff slideDecel robotBounce robotFriction wallBounce wallFriction ballBounce
  ballFriction settings balls loaded faces faceNx faceNy faceLevel boxes minX maxX minY maxY door wedge edgeDepth lipBlocks
  executed lines LIVING`);
/** Written within each move, or each step, before it is read; carried at the end of the run. */
const PASSING =
  words(`trig corners squeezed rides move profile at pushes pushNx pushNy standNx standNy stirred dirty deep touchQ fromX
  fromY pushers contact own pose start face give backward span inJam stopX stopY drawn other carried watcher toX toY along hitGap hitNx hitNy hitVx
  hitVy found probe real wallGap wallNx wallNy ask wary keptX keptY keptVx keptVy keptSx keptSy keptNx keptNy keptMode`);

function words(text: string): readonly string[] {
  return text.split(/\s+/);
}

/** What the kernels export, by name. */
const STATE: Readonly<Record<string, unknown>> = {
  ...armsKernel,
  ...ballsKernel,
  ...contactKernel,
  ...wakeKernel,
  ...resultKernel,
  ...robotKernel,
  ...wedgeKernel,
};

/** A copy of what these names hold, of arrays as far as there are balls or edges. */
function copyOf(names: readonly string[], entries: number): readonly (readonly [string, unknown])[] {
  return names.map((name) => {
    const state = STATE[name] as object;
    return [name, ArrayBuffer.isView(state) ? Object.values(state).slice(0, entries) : { ...state }];
  });
}

/** Puts something else into everything that lives on. */
function scribble(): void {
  for (const name of KEPT) {
    const state = STATE[name] as Record<string, unknown>;
    for (const [key, value] of Object.entries(state)) {
      if (typeof value === "number") state[key] = value + 1;
      if (typeof value === "boolean") state[key] = !value;
    }
  }
  armsKernel.setArms(swinging.robot.shape as HingedShape, 0.123);
}

it("a kept world holds all that lives on from move to move", () => {
  const plan = compileTrial(swinging, routineOf(armed(TRUNK)));
  openRun(plan, SEED, 1, placementOf(plan, SEED, 1), null);
  driveOn(plan, 11);
  const world = new KeptWorld();
  world.keep(plan);
  const footprint = BY_ANGLE.filter((name) => name !== "convex");
  const copies = () => [copyOf(KEPT, plan.kinds.length), copyOf(footprint, robotKernel.shape.count)] as const;
  const [before, outline] = copies();
  scribble();
  for (const [i, state] of copyOf(KEPT, plan.kinds.length).entries()) expect(state).not.toEqual(before[i]);
  world.takeUp(plan);
  expect(copies()).toEqual([before, outline]);
});

it("of every array, object and variable of the kernels it is known whether it lives on from move to move", () => {
  const room = new URL("../../../src/trial/", import.meta.url);
  const found = readdirSync(room)
    .filter((file) => file.endsWith(".kernel.ts"))
    .flatMap((file) => [
      ...readFileSync(new URL(file, room), "utf8").matchAll(
        /^(?:export )?(?:let (\w+)|const (\w+)(?::[^=\n]+)? =\s*(?:new |\{|\[))/gm,
      ),
    ])
    .map(([, variable, constant]) => variable ?? constant);
  const known = [...KEPT, ...BY_ANGLE, ...CONSTANT, ...PASSING];
  expect([...new Set(found)].sort()).toEqual(known.sort());
});
