import { topic } from "../language.ts";

/** What contradicts itself in a zone, between it and its balls, and where the robot starts. */
export const zoneIssueTexts = topic("zoneIssue", {
  legTooLong: {
    width: "The wedge's leg is longer than the zone's width; shorten it.",
    height: "The wedge's leg is longer than the zone's height; shorten it.",
  },
  span: (from: string, to: string) => `from ${from} to ${to}`,
  within: (from: number | string, to: string) => `within ${from} to ${to}`,
  box: (left: string, right: string, low: string, top: string) => `x ${left} to ${right}, y ${low} to ${top}`,
  withinBox: (right: string, top: string) => `within x 0 to ${right}, y 0 to ${top}`,
  doorwayOutside: (length: string) =>
    `The doorway reaches beyond its wall, which is ${length} long; move it or make it narrower.`,
  doorwayOnWedge: "The doorway and the wedge's leg share a part of the wall; move the doorway.",
  keepOutOutside: "The keep-out reaches out of the zone; cut it off at the walls.",
  keepOutOnWedge: "The keep-out lies over the wedge; move it.",
  keepOutInDoorway: "The keep-out stands in the doorway; move it.",
  clearOfWedge: "clear of the wedge",
  clearOfDoorway: "clear of the doorway",
  ramp: "A ramp rises from its lip to the corner: its rise must be above its lip.",
  tray: "A tray falls from its lip toward the corner: its rise must be below its lip.",
  flatLip: "A flat wedge is a mark without a lip; take the lip out or choose a shelf.",
  flatRise: "A flat wedge has no rise; take it out or choose a ramp.",
  shelfFalls: "A shelf does not fall from its lip; for that choose a tray.",
  shelfJumps:
    "The shelf rises over no distance; give the length of its ramp, or make the lip as high as the rise.",
  shelfTooLong: "The shelf's ramp is longer than the wedge is deep; shorten it.",
  noBalls: "There are no balls; add at least one group.",
  noBall: "no balls",
  tooManyBalls: (count: number, most: number) =>
    `There are ${count} balls in all; at most ${most} can be simulated.`,
  balls: (count: number) => `${count} balls`,
  ballCount: (most: number) => `1 to ${most} balls`,
  lipTooHigh: (ball: string) =>
    `No push can lift ball "${ball}" over a lip as high as its radius: lower the lip.`,
  wedgeTooSmall: (ball: string) =>
    `A ball "${ball}" in the very corner does not count as delivered: the wedge is too small for it, or the rule for when a ball counts is too strict.`,
  overWedge: { centre: "its centre over the wedge", wholly: "the whole ball over the wedge" },
  diameter: (length: string) => `a diameter of ${length}`,
  noRoom: "The balls cannot be laid out: use fewer balls, smaller gaps, or fewer forbidden regions.",
  allRoom: "room for all balls with their gaps",
  roomFor: (most: number, balls: number, attempts: number) =>
    `room for ${most} of ${balls} balls in ${attempts} attempts`,
  roomSeldom: (worked: number, attempts: number) =>
    `room for all balls in only ${worked} of ${attempts} attempts`,
  area: (needed: string, room: string) =>
    `the balls and their gaps take ${needed}, the zone has room for ${room}`,
  positionsCount: "A fixed layout gives one position for each ball, in the order of the groups.",
  positions: (count: number) => `${count} positions`,
  ballInWall: "The ball reaches into a wall or a keep-out, or lies outside the zone.",
  inside: (length: string) => `its centre at least ${length} inside`,
  ballOnRobot: "The ball lies where the robot starts.",
  fromRobot: (length: string) => `its centre at least ${length} from the robot`,
  ballsOverlap: (position: number) => `The ball overlaps the ball at position ${position}.`,
  sideBySide: "balls side by side",
  cornerTwice: "A corner is there twice; keep one.",
  cornerOnce: "each corner once",
  cornerMissing:
    "The zone's own corner must be among those the wedge may be in: add it, or put the zone's wedge into one of them.",
  among: (corner: string) => `${corner} among them`,
  cornerImpossible: (why: string) => `With the wedge in this corner the project would not hold: ${why}`,
  robotTooWide:
    "The robot is wider than the doorway it comes through: make it narrower, or let it start wholly inside the zone, its axle farther inside the wall line.",
  across: (length: string) => `${length} across its heading`,
  startInWall: "Where it starts, the robot stands in a wall: move or turn its start.",
  inDoorway: "inside the zone or in the doorway",
  startOnWedge: "Where it starts, the robot stands on the wedge: move its start or the wedge.",
  onWedge: "on the wedge",
  startOnKeepOut: "Where the robot starts there is a keep-out: move one of the two.",
  underRobot: "under the robot",
  clearOfStart: "clear of the robot's start",
  noTurn: "The robot can turn on the spot nowhere in this zone: it is too large for it.",
  circle: (length: string) => `it sweeps a circle of ${length}`,
  freeCircle: "a free circle that large somewhere between walls, keep-outs and wedge",
});
