import { describe, expect, it } from "vitest";
import { betterAfter, compareWords } from "../../../src/app/words/compareWords.ts";
import { eventWords, placeWords } from "../../../src/app/words/eventWords.ts";
import { guideWords, type Standing } from "../../../src/app/words/guideWords.ts";
import { moveWords } from "../../../src/app/words/moveWords.ts";
import { verdictWords } from "../../../src/app/words/runWords.ts";
import type { Move } from "../../../src/model/routine.ts";
import { RandomStream } from "../../../src/num/stream.ts";
import { pairVerdict } from "../../../src/search/pairVerdict.ts";
import type { TrialOutcome } from "../../../src/trial/outcome.ts";
import type { RunEventKind } from "../../../src/trial/recording.ts";

const outcome = (changes: Partial<TrialOutcome>): TrialOutcome => ({
  seed: 1,
  index: 0,
  placement: [],
  delivered: [true, true, true],
  deliveredAtS: [12.34, 40, 31],
  losses: [null, null, null],
  endPositions: [],
  timeS: 60,
  jams: 0,
  stalls: 0,
  hash: "0",
  ...changes,
});

describe("a run in words", () => {
  it("says when the last ball was home", () => {
    expect(verdictWords(outcome({}))).toBe("All 3 balls delivered, the last one after 40.0 s.");
  });

  it("gives each lost ball its reason, the same reason once", () => {
    const words = verdictWords(
      outcome({
        delivered: [false, true, false],
        deliveredAtS: [null, 40, null],
        losses: ["never-touched", null, "never-touched"],
      }),
    );
    expect(words).toBe("1 of 3 balls delivered. Balls 1 and 3 were never touched.");
  });

  it("keeps different reasons apart", () => {
    const words = verdictWords(
      outcome({
        delivered: [false, false, true],
        deliveredAtS: [null, null, 3],
        losses: ["rolled-out", "left-pusher", null],
      }),
    );
    expect(words).toBe(
      "1 of 3 balls delivered. Ball 1 rolled out of the doorway; ball 2 was touched but slipped off the pusher.",
    );
  });
});

describe("moves in words", () => {
  it.each<[Move, string]>([
    [{ kind: "drive", distanceMm: 600.4, speedMmPerS: 150 }, "drive 600 mm"],
    [{ kind: "drive", distanceMm: -200, speedMmPerS: 150 }, "back up 200 mm"],
    [{ kind: "turn", angleRad: Math.PI / 2, rateRadPerS: 1 }, "turn left 90° on the spot"],
    [{ kind: "turn", angleRad: -Math.PI / 8, rateRadPerS: 1 }, "turn right 22.5° on the spot"],
    [{ kind: "arc", distanceMm: 300, angleRad: -1, speedMmPerS: 150 }, "curve right 57.3° over 300 mm"],
    [
      { kind: "arc", distanceMm: -300, angleRad: 1, speedMmPerS: 150 },
      "curve left 57.3° over 300 mm, backward",
    ],
    [
      { kind: "toWall", distanceMm: 400, overrunMm: 60, speedMmPerS: 150 },
      "drive to the wall: 400 mm, then push on 60 mm",
    ],
    [
      { kind: "toWall", distanceMm: -400, overrunMm: -60, speedMmPerS: 150 },
      "back up to the wall: 400 mm, then push on 60 mm",
    ],
    [{ kind: "wait", durationS: 0.5 }, "wait 0.5 s"],
  ])("%j", (move, words) => {
    expect(moveWords(move)).toBe(words);
  });
});

describe("events in words", () => {
  it("name the ball by its number on the drawing", () => {
    const of = (kind: RunEventKind, ball: number) =>
      eventWords({ kind, ball, timeS: 1, xMm: 0, yMm: 0, move: 0 });
    expect(of("touched", 0)).toBe("The robot touches ball 1");
    expect(of("rolled-out", 2)).toBe("Ball 3 rolls out of the doorway");
    expect(of("jam", -1)).toBe("The robot jams");
  });

  it("say where in millimetres", () => {
    expect(placeWords({ xMm: 220.4, yMm: 540.6 })).toBe("220 mm from the left, 541 mm up");
  });
});

describe("the guide", () => {
  const standing: Standing = {
    step: "routines",
    hasProject: true,
    status: "running",
    hasFirstLook: true,
    routines: 72,
    bestRate: { value: 0.91, low: 0.88, high: 0.93, trials: 300 },
    choseBest: true,
    watched: false,
    atEnd: false,
  };

  it("says what to press as soon as there is something to watch", () => {
    expect(guideWords(standing)).toBe(
      "The best so far brings every ball home in 91 of 100 runs (likely between 88 and 93). Press Play to watch it.",
    );
  });

  it("says how much is being tried before that", () => {
    expect(guideWords({ ...standing, hasFirstLook: false })).toContain("Trying 72 routines");
  });

  it("does not promise answers that are not coming", () => {
    const nothing = { ...standing, hasFirstLook: false, routines: 0, bestRate: null };
    expect(guideWords(nothing)).toContain("Working out routines");
    expect(guideWords({ ...nothing, status: "stopped" })).toContain("Press Go on");
    expect(guideWords({ ...nothing, status: "failed" })).toContain("no routines could be worked out");
  });

  it("sends on to the next run at the end", () => {
    expect(guideWords({ ...standing, watched: true, atEnd: true })).toContain("next placement");
  });
});

describe("a comparison in words", () => {
  /** Trials of one ball: so many that only the first, only the second, both and neither brings home. */
  const verdictOf = (onlyFirst: number, onlySecond: number, both: number, neither: number) => {
    const times = (count: number, home: number) => new Array<number>(count).fill(home);
    const trialsOf = (first: number, second: number) => {
      const delivered = [
        ...times(onlyFirst, first),
        ...times(onlySecond, second),
        ...times(both, 1),
        ...times(neither, 0),
      ];
      return { indices: delivered.map((_, i) => i), delivered, deliveredCounts: [0, 0] };
    };
    return pairVerdict(trialsOf(1, 0), trialsOf(0, 1));
  };

  it("says on the way only what stays true however often one looks", () => {
    // 7 to 0: the exact test says 2/128 = 0.016, the evidence for many looks (odds of 28, 40 wanted) is not enough.
    const verdict = verdictOf(7, 0, 50, 43);
    expect(compareWords(verdict, false).at(-1)).toBe("Not settled yet.");
    expect(compareWords(verdict, true).at(-1)).toBe(
      "This one is better: equal ones would differ this much in 1.6 of 100 such comparisons.",
    );
    expect(compareWords(verdictOf(0, 60, 20, 20), false).at(-1)).toBe(
      "Settled, however often you look: the other is better.",
    );
  });

  it("asks more of the exact test each time somebody goes on, so that equals are told apart in 5 of 100 at most", () => {
    // 2/128 = 0.016 is enough at first (2.5 %), not after going on (1.25 %).
    const verdict = verdictOf(7, 0, 50, 43);
    expect([1, 2].map((asked) => betterAfter(verdict, asked))).toEqual(["first", "alike"]);
    expect(betterAfter(verdictOf(0, 40, 5, 5), 5)).toBe("second");
    // 6 to 0, 0.031: not enough for one who may go on.
    expect(compareWords(verdictOf(6, 0, 50, 44), true).join(" ")).toMatch(/Too close to call/);
    const stream = new RandomStream().open(8, 0, 0);
    let alarms = 0;
    let careless = 0;
    for (let experiment = 0; experiment < 200; experiment++) {
      let [first, second] = [0, 0];
      let [isAlarm, isCareless] = [false, false];
      for (let asked = 1; asked <= 5; asked++) {
        for (let differing = 0; differing < 50; differing++) {
          if (stream.uniform() < 0.5) first++;
          else second++;
        }
        const verdict = verdictOf(first, second, 0, 0);
        isAlarm ||= betterAfter(verdict, asked) !== "alike";
        isCareless ||= verdict.comparison.better !== "alike";
      }
      if (isAlarm) alarms++;
      if (isCareless) careless++;
    }
    expect(alarms / 200).toBeLessThanOrEqual(0.05);
    expect(careless / 200).toBeGreaterThan(0.08);
  });

  it("says how many more runs would settle a difference that is not told yet", () => {
    // As in tests/unit/search/pairVerdict: 12 to 8 of 100 runs want 1311 in all.
    const words = compareWords(verdictOf(12, 8, 40, 40), true);
    expect(words[0]).toBe(
      "In 100 runs of each every ball came home: in both 40 times, only in this one 12, only in the other 8, in neither 40.",
    );
    expect(words.at(-1)).toMatch(/about 12\d\d more runs of each would settle it/);
    expect(compareWords(verdictOf(3, 3, 10, 10), true).at(-1)).toMatch(/^No difference was seen/);
  });
});
