import { topic } from "../language.ts";

/** The ranked list, what it waits for, and what to do next. */
export const rankingTexts = topic("ranking", {
  title: "Routines, best first",
  orderAbout: "this order",
  orderWhy:
    "Every routine is run on the same placements of the balls with the same small errors. Those that do worse are given up early, so that the close ones get the most runs; the leaders are fine-tuned. At the end the best get fresh runs that had no say in the choice: only those tell how good they really are. “Likely between” says how far the true share may be from what the runs show.",
  stopped: "Stopped. What is known so far is shown.",
  goOn: "Go on",
  noRoutines: (why: string) => `No routines could be worked out: ${why}`,
  done: (count: number) => `Ranking done: ${count} routines.`,
  rankingStopped: "Ranking stopped.",
  showBest: (count: number) => `Show the ${count} best only`,
  showAll: (count: number) => `Show all ${count}`,
  missing: (count: number) => `${count} ${count === 1 ? "pattern" : "patterns"} without a routine here`,
  onAverage: (balls: string, seconds: string) => `${balls} on average · ${seconds} s`,
  rowAbout: "a row has these numbers",
  rowWhy:
    "What the list goes by, the range in which the true value lies 19 times out of 20, the balls home on average, and the seconds the moves take: the sheet of a routine explains each.",
  mayBeBest: "· ≈\u00a0may be as good as the best",
  fewRuns: (runs: number) => `· only ${runs} runs: others did better`,
  fromRuns: (runs: number) => `· from ${runs} ${runs === 1 ? "run" : "runs"}`,
  tooLong: (seconds: number) => `! longer than the ${seconds} s allowed`,
  notTested: (why: string) => `! could not be tested: ${why}`,
  waiting: "waiting for its first runs",
  firstLook: "First look at every pattern",
  moreSettings: (count: number) =>
    `First look at more settings: ${count} ${count === 1 ? "routine" : "routines"} so far`,
  following: (count: number) => `Following the best ${count} ${count === 1 ? "routine" : "routines"}`,
  fineTuning: "Fine-tuning the leaders",
  freshRuns: "Fresh runs for the finalists",
  workingOut: "Working out routines for this zone",
  bestIs: "Best is",
  second: "second",
  guide: {
    opening: "Opening the project…",
    zone: "Make it like your floor, then go on to your robot.",
    robot: "Make it like yours: the routines are ranked anew while you do.",
    practice: "Measure, code, try it on your floor, and write down what really happened.",
    jury: "Show what you found out: every number here can be run again.",
    weak: "Change what loses most balls first, then look here again.",
    failed: "For this zone no routines could be worked out: the reason stands in the list.",
    stopped: "Stopped before the first answers. Press Go on to have them.",
    working: "Working out routines for this zone. This takes a moment.",
    trying: (count: number) =>
      `Trying ${count} ${count === 1 ? "routine" : "routines"} in this zone. First answers in a moment.`,
    atEnd: "Now try the next placement, or look at a run that failed: why did it?",
    watched: "Watch which ball slips away, and when. Drag the slider to look again.",
    press: "Press Play to watch this routine, or pick another one from the list.",
    best: (rate: string) => `The best so far brings every ball home in ${rate}. Press Play to watch it.`,
  },
  aims: {
    "every-ball": "every ball home most often",
    points: "most points",
    "home-by": "most balls home by a second",
  },
});
