import { topic } from "../language.ts";

/** The step in which the zone is described. */
export const zoneStepTexts = topic("zoneStep", {
  title: "The zone",
  hint: "Measure the real floor with a tape. Type a number, or drag the handles on the drawing.",
  walls: "Walls",
  doorway: "Doorway",
  doorwayWall: "In which wall",
  wedge: "Wedge",
  wedgeCorner: "In which corner",
  wedgeProfile: "Seen from the side",
  keepOuts: "Keep-outs",
  keepOut: "Keep-out",
  keepOutAbout: "keep-outs matter",
  keepOutWhy: "A keep-out is a solid block on the floor, like a pillar: neither robot nor ball can enter it.",
  nameAndNotes: "Name and notes",
  name: "Name of the project",
  notes: "Notes: who measured, when, what is not sure",
  number: {
    width: {
      label: "From left to right, inside",
      why: "A longer floor takes more lanes, and more time.",
    },
    height: {
      label: "From front to back, inside",
      why: "A longer floor takes more lanes, and more time.",
    },
    doorwayMiddle: {
      label: "Its middle, from the wall’s left or lower end",
      why: "Here the robot comes in, and here balls can roll out.",
    },
    doorwayWidth: {
      label: "Width",
      why: "The robot must fit through; a wide doorway loses more balls.",
    },
    wedgeLegX: {
      label: "Along the lower or upper wall",
      why: "A larger wedge is easier to meet, and leaves less floor to the robot.",
    },
    wedgeLegY: {
      label: "Along the left or right wall",
      why: "A larger wedge is easier to meet, and leaves less floor to the robot.",
    },
    wedgeLip: {
      label: "Lip at its long side",
      why: "A ball must be pushed over it: a slow one rolls back.",
    },
    wedgeRise: {
      label: "Height at its end",
      why: "On a slope a ball rolls: back out of a ramp, on into a tray.",
    },
    wedgeRun: { label: "Length of the ramp", why: "A short ramp is steep: a ball needs more speed for it." },
    blockLeft: {
      label: "Its left side, from the left",
      why: "It decides which way past it is wide enough for the robot.",
    },
    blockLow: {
      label: "Its lower side, from below",
      why: "It decides which way past it is wide enough for the robot.",
    },
    blockWidth: { label: "Left to right", why: "How much of the floor it takes." },
    blockHeight: { label: "Front to back", why: "How much of the floor it takes." },
    count: { label: "How many", why: "A run only counts as a success when every ball is home." },
    points: {
      label: "Points for each",
      why: "With different points, a routine that brings the dear ones home first can be the better one.",
    },
    diameter: {
      label: "Diameter",
      why: "A large ball sticks out of the pusher; a small one hides in corners.",
    },
    ballMass: { label: "Mass", why: "It decides how balls throw each other about when they meet." },
    rolling: {
      label: "Rolling resistance",
      why: "How quickly a rolling ball slows down on your floor: it stops after v² ÷ (2 · this · 9.81 m/s²).",
    },
    bounce: {
      label: "Bounce (0 dead, 1 lively)",
      why: "A lively ball jumps off walls and pusher, and is harder to keep.",
    },
    wallFriction: {
      label: "Friction at walls and robot",
      why: "A ball that grips rolls up against a wall and jams between wall and robot.",
    },
    floorFriction: {
      label: "Friction on the floor",
      why: "It decides how soon a pushed ball rolls instead of sliding.",
    },
    wallMargin: {
      label: "Gap to walls and keep-outs",
      why: "Balls that lie at a wall are the hardest to fetch: with a large gap there are none.",
    },
    spacing: { label: "Gap between balls", why: "Balls close together push each other away." },
    wedgeMargin: {
      label: "Gap to the wedge",
      why: "A ball beside the wedge is home with one push, or hard to get behind.",
    },
    robotMargin: {
      label: "Gap to the robot",
      why: "A ball right before the robot is met by the first move.",
    },
    timeLimit: {
      label: "Time allowed",
      why: "What is not home by then is lost; with more time slower, surer routines win.",
    },
  },
  mayBe: "On the day it may also be here",
  mayBeWhy:
    "Where the corner is only told on the day, each run draws it anew, and only a robot that senses the floor can find it.",
  spotLeft: (ball: number) => `Ball ${ball}, from the left`,
  spotLow: (ball: number) => `Ball ${ball}, from below`,
  spotWhy: "A routine for fixed spots may be useless anywhere else.",
  keepOutTake: (number: number) => `Take keep-out ${number} away`,
  keepOutAdd: "Add a keep-out",
  regionTake: (number: number) => `Take region ${number} away`,
  regionAdd: "Add a region",
  balls: "Balls",
  kind: (number: number) => `Kind ${number}`,
  ballNumbers: "Its numbers",
  ballName: "Name",
  ownBall: "Own ball",
  inside: "Inside",
  takeKind: (number: number) => `Take kind ${number} away`,
  addKind: "Add another kind",
  layout: "How the balls are laid out",
  lie: "They lie",
  noBall: "Where no ball is laid",
  region: "Region",
  shaded:
    "The shaded floor is where the rule lets a ball’s middle lie; the rings are four placements it could give.",
  shadedKinds: "Larger balls keep farther from everything: darkest is where balls of every size may lie.",
  rollsBack: (slope: string, stays: string) =>
    `! This ramp rises ${slope} mm in every 100 mm. A ball that is let go stays only on less (${stays}), so here it rolls back out: only what the robot still holds at the end is home. If your real ramp keeps balls, measure how far they roll (Practice, Tape measure).`,
  staysUpTo: (ball: string, slope: string) => `${ball}: about ${slope} mm at most`,
  spotsDragged: "Each ball can be dragged on the drawing.",
  counts: "What counts",
  home: "A ball is home",
  homeAbout: "it matters when a ball is home",
  homeWhy:
    "The event’s own rules say this; a ball at the edge of the wedge is counted by one rule and not by the other.",
});
