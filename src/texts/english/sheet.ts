import { topic } from "../language.ts";

/** The sheet for the jury. Titles: for engineers and, simply, for visitors. */
export const sheetTexts = topic("sheet", {
  pageTitle: (project: string) => `${project}: our routine`,
  head: (project: string) => `${project}: how our robot brings the balls home`,
  titles: {
    task: "The task and the way",
    why: "Why this routine",
    evidence: "The evidence",
    practice: "Practice runs against the model",
    fails: "Where it fails",
    decided: "What was decided, and why",
    limits: "What the model leaves out",
    again: "Run it again",
  },
  simply: {
    task: "What our robot does",
    why: "Why this way and no other",
    evidence: "How often it works",
    practice: "On the real floor",
    fails: "What still goes wrong",
    decided: "What we changed on the way",
    limits: "What a computer cannot know",
    again: "See for yourself",
  },
  appendix: "Appendix: the steps",
  lead: (routine: string, rate: string, range: string, runs: number) =>
    `${routine}. In ${rate} (${range}) every ball was home, in ${runs} simulated runs with the balls elsewhere each time and the robot drifting as its project file says.`,
  leadSimply: (rate: string, range: string, runs: number) =>
    `In ${rate} (${range}) it brings every ball home. We know because a computer tried it ${runs} times, with the balls elsewhere each time, before our robot drove it once.`,
  task: (size: string, balls: number, seconds: string) =>
    `A zone of ${size}, ${balls} ${balls === 1 ? "ball" : "balls"} to bring onto the wedge (hatched) within ${seconds} s.`,
  way: (robot: string, seconds: string, moves: number, hasAppendix: boolean) =>
    `${robot} takes ${seconds} s for ${moves} moves; the numbers on its way are those of ${hasAppendix ? "the steps in the appendix" : "its moves"}.`,
  compared:
    "These were tried on the same placements of the balls, with the same luck. Where the ranges overlap widely the order may be chance.",
  comparedSimply:
    "We let every way of driving search the same places: same balls, same luck. Where the ranges overlap widely, the order may be chance.",
  beaten: (label: string) =>
    `One way brought every ball home more often than ours, by more than chance: ${label}. Why we drive ours all the same stands with our decisions.`,
  others: (count: number) => `${count} other patterns did no better than these.`,
  heads: { routine: "routine", rate: "every ball home in", range: "range", takes: "takes" },
  /** Under that heading. */
  between: (low: number, high: number) => `likely between ${low} and ${high}`,
  thisOne: (routine: string) => `This one: ${routine}`,
  onAverage: (mean: string, balls: number) => `On average ${mean} of ${balls} balls came home.`,
  curves: (runs: number) =>
    `Share of ${runs} runs with so many balls home by each second; the veil is what these runs leave open.`,
  trustLess: (leftOut: string, matters: string) => `${leftOut} Trust less: ${matters}.`,
  moreLimits: (count: number) => `${count} more limits stand in the long sheet.`,
  replay: (runs: number) => `Run number N of the ${runs} above, exactly as it was counted:`,
  from0: ", N from 0.",
  caution:
    "Moving tracks and arms can pinch: fingers, hair and sleeves away. Batteries are charged under an adult’s eye. The event’s own rules and the venue’s safety rules come first.",
  lost: (balls: number, why: string) => `${balls} ${balls === 1 ? "ball" : "balls"} ${why}`,
  hardest: "The hardest placement",
  earlier: (count: number) => `${count} earlier ones stand in the project file.`,
});
