import { topic } from "../language.ts";

/** The "why?" beside numbers: `about` finishes "why …", `words` answers in one sentence. */
export const whyTexts = topic("why", {
  ballsHome: {
    about: "an average",
    words:
      "All balls brought home in all runs, divided by the number of runs: it also tells apart routines that seldom bring every ball home.",
  },
  losses: {
    about: "balls are counted so",
    words:
      "Each ball that is not home when the run ends counts once, by the last thing that happened to it; one run may lose several.",
  },
  map: {
    about: "a place has its mark",
    words:
      "Of the runs that were looked at, those count for a place in which a ball began there or nearby; where too few did, there is no mark.",
  },
  home: {
    about: "the curves have bands",
    words:
      "With other runs each curve would lie a little differently: 19 times out of 20 the true one stays within its band, all along.",
  },
  stop: {
    about: "this moment is the best to stop",
    words: "From there on, going on costs seconds in every run but brings hardly a ball home in any.",
  },
  budget: {
    about: "so much drift is allowed",
    words:
      "All errors are made smaller or larger together until nine tenths of what the pusher touches without drift are still touched for sure.",
  },
  layouts: {
    about: "these layouts are the worst",
    words:
      "A search moves the balls about for as long as the routine does worse; the rates come from runs it has not seen.",
  },
  fixes: {
    about: "there is a range",
    words:
      "The line shows how far the true difference may be from the one that the runs show; where it crosses zero, the change may do nothing.",
  },
  worth: {
    about: "a part is worth this",
    words:
      "The parts share out all balls that come home, each by what it adds on average to whatever other parts are there.",
  },
  ghosts: {
    about: "these runs",
    words:
      "They are the runs from 0 on, each with balls and errors of its own, so the share that works is a sample of the rate in the list.",
  },
  against: {
    about: "there is a difference",
    words:
      "Both have made the same runs with the same balls and errors, so what differs comes from your change and not from luck.",
  },
  runsToLoad: "Working out the runs",
});
