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
  follows: {
    about: "this follows",
    words:
      "It is worked out from the outline, the drive, the grip and the zone that you typed: change one of them, and it changes at once.",
  },
  moves: {
    about: "the moves have these numbers",
    words:
      "They follow from the pattern, the zone and the size of your robot: every stretch ends where the next one needs it to begin.",
  },
  doubt: {
    about: "it is not surer",
    words:
      "More runs make the first doubt smaller; the second comes from values that nobody has measured on your floor, and only measuring them makes it smaller.",
  },
  run: {
    about: "this run ends like that",
    words:
      "It is worked out second by second from the placement and the small errors of its number; a ball is home when it rests on the wedge at the end.",
  },
  layers: {
    touched: {
      about: "a place is touched",
      words:
        "The way of the pusher without any error is laid over the floor: a place counts when a ball whose middle lies there is touched by it.",
    },
    sure: {
      about: "a place is sure",
      words:
        "It is sure when no drift within the bounds can leave a ball there untouched, and open when some drift can.",
    },
    pushes: {
      about: "a place takes so long",
      words:
        "For every place the quickest chain of straight pushes into the corner is searched, with the robot's own ways to them: what a robot needs that knows where the ball lies.",
    },
    carry: {
      about: "a ball can be lost here",
      words:
        "The robot brakes or turns here, and the mark says whether a ball stays in a pusher of this shape at this speed, on this floor.",
    },
  },
  steps: {
    about: "the wheels turn so far",
    words:
      "A wheel turns by its way on the floor divided by its rim, made up for the drift on average; when the robot turns, its wheels go along a circle as wide as the gauge.",
  },
  measured: {
    about: "there is a range",
    words:
      "Tests differ a little from try to try, so the mean of yours is only near the true value, which lies in this range 19 times out of 20.",
  },
  proposed: {
    about: "these placements",
    words:
      "They are spread so that few runs try the whole floor, with some that are hard for this routine; each ball's two numbers are its millimetres from the left and from the lower wall.",
  },
  practised: {
    about: "promise and practice are compared so",
    words:
      "The model makes many runs of every placement that you tried and says how often it works there; the rate after practice is that of your own runs, with one more that worked and one that failed, so that few runs promise neither all nor nothing.",
  },
  decided: {
    about: "these figures count",
    words:
      "Before and after made the same runs with the same balls and errors, and all that is needed to make them again is kept here.",
  },
  runsToLoad: "Working out the runs",
});
