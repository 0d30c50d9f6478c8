import { failingsOf } from "../../src/jobs/failings.ts";
import type { Project } from "../../src/model/project.ts";
import type { Decision } from "../../src/model/record.ts";
import type { Routine } from "../../src/model/routine.ts";
import { routineDurationS } from "../../src/motion/duration.ts";
import { assess } from "../../src/practice/assess.ts";
import type { SheetFacts } from "../../src/report/sheet/sheetFacts.ts";
import { driftBounds } from "../../src/score/driftBounds.ts";
import { lossesByMove } from "../../src/score/lossCounts.ts";
import { summarise } from "../../src/score/stress.ts";
import { withPlacement } from "../../src/search/variant.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runFates } from "../../src/trial/fates.ts";
import { recordTrial, runBatch } from "../../src/trial/run.ts";

/** Facts of a sheet from a few trials, as the job gathers them from many. */
export function sheetFacts(project: Project, routine: Routine, trials = 12): SheetFacts {
  const plan = compileTrial(project, routine);
  const summary = summarise([runBatch(plan, 1, 0, trials)]);
  const failings = failingsOf(project, routine, [runFates(plan, 1, 0, trials)])!;
  const { outcome, recording } = recordTrial(plan, 1, 3);
  const { placement } = outcome;
  const hard = runFates(compileTrial(withPlacement(project, placement), routine), 2, 0, 5);
  const lines = routine.program === undefined ? hard : { ...hard, lossMove: hard.lossLine };
  const rated = { placement, seed: 2, deliveredStill: 0, successRate: summary.successRate, meanDelivered: 1 };
  const weakness = {
    ...{ status: "done" as const, failings, coverage: null, blindSpots: [], sure: null, budget: null },
    ...{ bounds: driftBounds(project.robot.drift, 1), beatenStill: [], beatenDrifting: [rated] },
  } as const;
  const attempts = Array.from({ length: 12 }, (_, i) => ({ promised: 0.4, succeeded: i % 6 === 0 }));
  return {
    ...{ project, routine, seed: 1, projectArgument: "mill.json", decisions: [1, 2, 3].map(decision) },
    durationS: routineDurationS(project.robot.drive, routine.moves),
    practice: {
      assessment: assess(attempts),
      fit: {
        straight: { factor: 1, low: 0.5, high: 2, openBelow: true, openAbove: false },
        turn: { factor: 2, low: 2, high: 4, openBelow: false, openAbove: true },
        blame: "turns",
        logLikelihoods: [],
      },
    },
    evidence: {
      ...{ summary, failings, weakness },
      alternatives: Array.from({ length: 9 }, (_, i) => ({
        label: `Rings inward: long closing wall first, squares up at each corner, ${10 * i} % speed`,
        ...{ successRate: summary.successRate, durationS: 90 + i, decides: i === 4 },
      })),
      hardest: { ...rated, trials: 5, balls: 5 * hard.balls, losses: lossesByMove(lines) },
      example:
        routine.program === undefined
          ? null
          : { index: 3, home: outcome.delivered.filter(Boolean).length, recording },
    },
  };

  function decision(day: number): Decision {
    return {
      ...{ date: `2031-04-0${day}`, kind: "fix", title: "a pusher 20 mm wider" },
      figures: [
        "a pusher 20 mm wider: +6 of 100 runs (4 to 8), costs 3 s. Before: 52 of 100 runs (likely between 48 and 56). 600 runs each, on the same placements.",
      ],
      reason: "We had a longer strip of plastic left over.",
      inputs: { project, routines: [], measurements: "", seed: 1, trials: 600 },
    };
  }
}
