import { describe, expect, it } from "vitest";
import { Player } from "../../../src/app/state/player.svelte.ts";
import type { ViewRun } from "../../../src/view/zoneView.ts";

/** A run of 10 s with moves that start at 0, 2 and 5 s. */
function playerAt(timeS: number): Player {
  const player = new Player();
  const none = { timeS: new Float64Array(), xMm: new Float64Array(), yMm: new Float64Array() };
  const run: ViewRun = {
    outcome: {
      seed: 1,
      index: 0,
      placement: [],
      delivered: [],
      deliveredAtS: [],
      losses: [],
      endPositions: [],
      timeS: 10,
      jams: 0,
      stalls: 0,
      hash: "0",
    },
    recording: {
      durationS: 10,
      ballCount: 0,
      frameTimeS: Float64Array.of(0),
      frames: new Float64Array(),
      ballConstants: new Float64Array(),
      moveStartS: Float64Array.of(0, 2, 5),
      moves: new Float64Array(24),
      pieces: new Float64Array(),
      events: [],
    },
    trace: { robot: none, balls: [] },
  };
  // The browser's frames are not under test here.
  globalThis.cancelAnimationFrame ??= () => {};
  player.show(run);
  player.seek(timeS);
  return player;
}

describe("the player", () => {
  it("stays inside the run", () => {
    expect(playerAt(-3).timeS).toBe(0);
    expect(playerAt(12).timeS).toBe(10);
    expect(playerAt(4).atEnd).toBe(false);
  });

  it("takes the slider's last place for the end", () => {
    const player = playerAt(10 - 1e-9);
    expect(player.atEnd).toBe(true);
    expect(player.timeS).toBe(10);
  });

  it("steps to the next move's start, at last to the end", () => {
    const player = playerAt(3);
    player.stepMove(1);
    expect(player.timeS).toBe(5);
    player.stepMove(1);
    expect(player.timeS).toBe(10);
  });

  it("steps back to this move's start first, then to the one before", () => {
    const player = playerAt(3);
    player.stepMove(-1);
    expect(player.timeS).toBe(2);
    player.stepMove(-1);
    expect(player.timeS).toBe(0);
  });

  it("keeps its speed within its steps", () => {
    const player = playerAt(0);
    for (let i = 0; i < 9; i++) player.changeSpeed(1);
    expect(player.speed).toBe(8);
    for (let i = 0; i < 9; i++) player.changeSpeed(-1);
    expect(player.speed).toBe(0.25);
  });
});
