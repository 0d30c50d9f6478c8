import { describe, expect, it } from "vitest";
import { ballsOf, type Project } from "../../../../src/model/project.ts";
import { entryPose } from "../../../../src/motion/entry.ts";
import { wrapAngle } from "../../../../src/num/elementary.ts";
import { targetFrame } from "../../../../src/plan/frame.ts";
import type { LyingBall } from "../../../../src/plan/push/ballGuard.ts";
import { distanceTo } from "../../../../src/plan/push/fromRobot.ts";
import { makerFor, planPushSequence, sequenceRoutine } from "../../../../src/plan/push/pushSequence.ts";
import { SequenceSearch } from "../../../../src/plan/push/sequenceSearch.ts";
import { compileTrial } from "../../../../src/trial/compile.ts";
import { homeAfter } from "../../../../src/trial/homeAfter.ts";
import { drawPlacement } from "../../../../src/trial/placement.ts";
import { runTrial } from "../../../../src/trial/run.ts";
import { bruteSequence, greedySequence, isBetter } from "../../../support/bruteSequence.ts";
import { mirroredProject } from "../../../support/mirror.ts";
import { shippedProject } from "../../../support/projectFiles.ts";

const SEED = 1;
const usual = shippedProject();

function knownBalls(project: Project, index: number) {
  return drawPlacement(project, SEED, index).map((place, i) => ({ ...place, index: i }));
}

/** The first `count` balls of a layout, in a zone that already has its wedge in the frame's corner. */
function framed(index: number, count: number) {
  const frame = targetFrame(usual, true);
  const kinds = ballsOf(frame.project);
  const balls: LyingBall[] = drawPlacement(frame.project, SEED, index)
    .slice(0, count)
    .map((place, i) => ({ ...place, index: i, radiusMm: (kinds[i]?.diameterMm ?? 0) / 2 }));
  const from = entryPose(frame.project.zone, frame.project.robot);
  return { maker: makerFor(frame, balls), balls, from };
}

describe("a push sequence", () => {
  it("brings its balls home without drift: nine of ten planned ones, and plans for eight of ten", () => {
    const runs = 12;
    let planned = 0;
    let home = 0;
    for (let i = 0; i < runs; i++) {
      const balls = knownBalls(usual, i);
      const sequence = planPushSequence(usual, balls);
      const plan = compileTrial(usual, sequenceRoutine(sequence), {
        drift: false,
        spread: false,
        placement: balls,
      });
      const { delivered } = runTrial(plan, SEED, i);
      const fetched = sequence.trips.flatMap((trip) => trip.balls);
      expect([...fetched, ...sequence.leftOut].sort()).toEqual([0, 1, 2]);
      planned += fetched.length;
      home += fetched.filter((ball) => delivered[ball]).length;
    }
    expect(planned).toBeGreaterThanOrEqual(0.8 * 3 * runs);
    expect(home).toBeGreaterThanOrEqual(0.9 * planned);
  });

  it.each(["plate-robot.json", "pillar-zone.json", "ramp-corner.json"])(
    "of a plate or a V keeps what it plans for, where the engine is asked: %s",
    (name) => {
      const project = shippedProject(name);
      let planned = 0;
      for (let i = 0; i < 6; i++) {
        const balls = knownBalls(project, i);
        const { moves, trips } = planPushSequence(project, balls, { homeAfter: homeAfter(project, balls) });
        const home = homeAfter(project, balls)(moves);
        const fetched = trips.flatMap((trip) => trip.balls);
        expect(fetched.filter((ball) => home[ball] !== true)).toEqual([]);
        planned += fetched.length;
      }
      expect(planned).toBeGreaterThanOrEqual(6);
    },
  );

  it("shoves a ball aside first where a plate has no straight way home with it", () => {
    const project = shippedProject("plate-robot.json");
    // Near the left wall: the robot has no room behind it for a push at the wedge.
    const placement = [{ xMm: 125, yMm: 372 }];
    const one = { ...project, balls: project.balls.map((group) => ({ ...group, count: 1 })) };
    const balls = placement.map((place, index) => ({ ...place, index }));
    const { moves, trips } = planPushSequence(one, balls, { homeAfter: homeAfter(one, balls) });
    expect(trips.map((trip) => trip.balls)).toEqual([[0]]);
    expect(homeAfter(one, balls)(moves)).toEqual([true]);
    const slow = moves.filter((move) => move.kind === "drive" && move.speedMmPerS < 150);
    expect(slow.length).toBeGreaterThan(0);
  });

  it("meets a ball beside the pusher's middle where only so its ends have room at the walls", () => {
    // Straight at the wedge along the wall: with the ball in the middle of the plate or of the V, a tip would meet it.
    for (const [name, xMm, yMm] of [
      ["plate-robot.json", 296, 853],
      ["pillar-zone.json", 1185, 491],
    ] as const) {
      const project = shippedProject(name);
      const one = { ...project, balls: project.balls.map((group) => ({ ...group, count: 1 })) };
      const { moves, trips } = planPushSequence(one, [{ xMm, yMm, index: 0 }]);
      expect(
        trips.map((trip) => trip.balls),
        name,
      ).toEqual([[0]]);
      expect(homeAfter(one, [{ xMm, yMm }])(moves), name).toEqual([true]);
    }
  });

  it("carries balls between closed arms where that is quicker, and opens them for the wedge", () => {
    const project = shippedProject("swinging-arms.json");
    let caged = 0;
    for (let i = 0; i < 4; i++) {
      const balls = knownBalls(project, i);
      const { moves, trips } = planPushSequence(project, balls, { homeAfter: homeAfter(project, balls) });
      const home = homeAfter(project, balls)(moves);
      expect(trips.flatMap((trip) => trip.balls).filter((ball) => home[ball] !== true)).toEqual([]);
      for (const { fromMove, toMove } of trips) {
        const arms = moves.slice(fromMove, toMove).flatMap((move) => (move.kind === "arms" ? [move.to] : []));
        if (arms.length === 0) continue;
        expect(arms).toEqual(["closed", "open"]);
        caged++;
      }
    }
    expect(caged).toBeGreaterThan(0);
  });

  it("takes another way, or none, where the engine says no", () => {
    const balls = knownBalls(usual, 0);
    const free = planPushSequence(usual, balls);
    const asked: number[] = [];
    const none = planPushSequence(usual, balls, {
      homeAfter: (moves) => {
        asked.push(moves.length);
        return [false, false, false];
      },
    });
    expect(free.trips.length).toBeGreaterThan(0);
    expect(none).toMatchObject({ moves: [], trips: [], leftOut: [0, 1, 2] });
    expect(asked.length).toBeGreaterThan(3);
  });

  it("is the best of all orders, groups and sides there are, for two balls", () => {
    for (const index of [0, 3, 7]) {
      const { maker, balls, from } = framed(index, 2);
      const found = new SequenceSearch(maker, balls, 120).run(from);
      const all = bruteSequence(maker, balls, from, 120);
      expect(found.exact).toBe(true);
      expect(found.legs.reduce((sum, { trip }) => sum + trip.balls.length, 0)).toBe(all.home);
      expect(found.legs.at(-1)?.homeS).toBeCloseTo(all.lastS, 9);
    }
  });

  it("is never worse than always taking the soonest trip", () => {
    let better = 0;
    for (let index = 0; index < 6; index++) {
      const { maker, balls, from } = framed(index, 3);
      const { legs, exact } = new SequenceSearch(maker, balls, 120).run(from);
      const found = {
        home: legs.reduce((sum, { trip }) => sum + trip.balls.length, 0),
        lastS: legs.at(-1)?.homeS ?? 0,
      };
      const greedy = greedySequence(maker, balls, from, 120);
      expect(exact).toBe(true);
      expect(isBetter(greedy, { ...found, lastS: found.lastS - 1e-9 }), `layout ${index}`).toBe(false);
      if (isBetter(found, greedy)) better++;
    }
    expect(better).toBeGreaterThan(0);
  });

  it("takes no less time for a way than a differential drive needs", () => {
    // Balkcom and Mason 2002 (abstract; cost as in LaValle, Planning Algorithms, 15.3.3): ∫(|v| + b|ω|) dt / v_max.
    const { topSpeedMmPerS, turnRateRadPerS } = usual.robot.drive;
    let ways = 0;
    for (let index = 0; index < 8; index++) {
      const { maker, balls, from } = framed(index, 3);
      let pose = from;
      for (const { trip, approach } of new SequenceSearch(maker, balls, 120).run(from).legs) {
        const turned = Math.abs(wrapAngle(trip.start.headingRad - pose.headingRad));
        const least = distanceTo(pose, trip.start) / topSpeedMmPerS + turned / turnRateRadPerS;
        expect(approach.timeS).toBeGreaterThanOrEqual(least - 1e-9);
        pose = trip.end;
        ways++;
      }
    }
    expect(ways).toBeGreaterThan(8);
  });

  it("keeps to the time it has: balls that would be late are left out", () => {
    const balls = knownBalls(usual, 0);
    const whole = planPushSequence(usual, balls);
    const first = whole.trips[0]?.homeS ?? 0;
    expect(whole.trips.length).toBeGreaterThan(1);
    const short = planPushSequence(usual, balls, { timeLeftS: first + 0.1 });
    expect(short.trips.every(({ homeS }) => homeS <= first + 0.1)).toBe(true);
    expect(short.leftOut.length).toBeGreaterThan(whole.leftOut.length);
    expect(planPushSequence(usual, balls, { timeLeftS: 0 }).moves).toEqual([]);
  });

  it("is the mirror image in a mirrored zone", () => {
    const mirrored = mirroredProject(usual);
    const balls = knownBalls(usual, 2);
    const across = balls.map((ball) => ({ ...ball, xMm: usual.zone.widthMm - ball.xMm }));
    const one = planPushSequence(usual, balls);
    const other = planPushSequence(mirrored, across);
    expect(other.trips.map((trip) => trip.balls)).toEqual(one.trips.map((trip) => trip.balls));
    expect(other.timeS).toBeCloseTo(one.timeS, 6);
  });
});
