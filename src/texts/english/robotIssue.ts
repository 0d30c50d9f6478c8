import { topic } from "../language.ts";

/** What contradicts itself in a robot, its outline and its sensors. */
export const robotIssueTexts = topic("robotIssue", {
  axleAhead: "The axle lies ahead of the body's front; it is measured from the body's rear edge.",
  armsMeet:
    "The arms meet, so that no ball can come between them: make them shorter, thinner or turn them outward.",
  tooClose: (length: string) => `${length} too close`,
  aGap: "a gap above 0 mm",
  armsTooShort:
    "The arms are thicker than they are long, so that their tips lie in the body: make them longer.",
  hingeBeside: "The hinges lie beside the body; they sit on its front, measured from its middle.",
  armsStayShut: "Open arms must be turned farther outward than closed ones.",
  openClosed: (open: string, closed: string) => `${open}° open, ${closed}° closed`,
  scoopTooThick:
    "The scoop's sides are too thick for so flat a V: at the body they would be wider than the body. Make them thinner or the scoop deeper.",
  tooFewPoints: "An outline needs at least 3 points.",
  points: (count: number) => `${count} points`,
  pointTwice:
    "This point is followed by the same point again; each is given once, the first not repeated at the end.",
  twice: (point: string) => `${point} twice`,
  onceEach: "each point once",
  crosses:
    "The outline crosses or touches itself; give its points in the order in which they follow each other around the robot.",
  crossing: (count: number) => `${count} points that cross`,
  aSimpleOne: "a simple outline",
  tooSmall: "The outline is too small for a robot; lengths are in mm.",
  edges: (last: number) => `edge numbers from 0 to ${last}, each once`,
  noPusher: "No edge is meant to touch balls; number at least one (edge 0 runs from point 0 to point 1).",
  noEdge: "There is no edge with this number.",
  edgeTwice: "An edge is numbered twice; keep one.",
  seesNothing: "The sensor sees nothing at all: its range ends before its nearest distance.",
  sensorTwice: "There is a sensor of this sort already; keep one.",
  sameAs: (path: string) => `the same as ${path}`,
  one: "one",
});
