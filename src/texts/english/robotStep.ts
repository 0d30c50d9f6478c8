import { topic } from "../language.ts";

/** The step in which the robot is described. Each number with what it does to the outcome. */
export const robotStepTexts = topic("robotStep", {
  title: "The robot",
  hint: "Put the real robot on paper, draw around it, and measure the drawing.",
  follows: "What follows",
  shape: "Shape, seen from above",
  pushes: "What pushes the balls",
  corners: (count: number) => `The ${count} corners, from the middle of the axle`,
  floorCorners: (count: number) =>
    `The ${count} corners of what stands on the floor (dashed): tracks and low parts`,
  shapes: {
    plate: "A straight plate",
    arms: "Two arms",
    hinged: "Two arms that swing",
    scoop: "A V-shaped scoop",
    polygon: "An outline of your own",
  },
  sketch: (length: string, width: string, ball: string) =>
    `The robot from above, driving to the right: ${length} long and ${width} wide, a ball of ${ball} in front of it.`,
  sketchKey: "The thick edge is the pusher, the dot the middle between the wheels.",
  sketchHinged: (gap: string) =>
    `The arms are drawn open, and dashed as they are when closed: then ${gap} stay between their tips.`,
  drive: "Drive",
  climbs: "It can drive up onto the wedge",
  grip: "Grip and bounce",
  start: "Where it starts",
  naming: "Its name",
  name: "Name of the robot",
  drift: "How it drifts",
  driftHint:
    "Let it drive 1 m and turn ten quarter turns, five times each, and measure. “Give or take” means: two times out of three it is no further off than this.",
  driftSame: "The same all run long",
  driftSameWhy:
    "Wheel size, battery and floor change from day to day, but hardly within one run: such errors add up.",
  driftNew: "New in every move",
  number: {
    bodyLength: {
      label: "Body, back to front",
      why: "A long robot needs more room to turn beside walls and corners.",
    },
    bodyWidth: {
      label: "Body, left to right",
      why: "It must fit through the doorway; a wide one sweeps more in each lane.",
    },
    axleFromRear: {
      label: "Axle, from the back",
      why: "The robot turns about the axle: what is far from it swings out far.",
    },
    plateWidth: {
      label: "Plate, left to right",
      why: "A wider plate touches more in each lane, but gets caught in the doorway and in corners.",
    },
    plateReach: {
      label: "Plate, ahead of the body",
      why: "What reaches ahead pushes balls over the wedge’s edge while the tracks stay before it.",
    },
    armLength: {
      label: "Arms, length",
      why: "Longer arms hold a ball better in turns, and need more room to turn.",
    },
    armThickness: {
      label: "Arms, thickness",
      why: "Thick arms leave less room between them and cannot reach a ball close to a wall.",
    },
    armAngle: {
      label: "Arms, turned outward",
      why: "Turned outward they catch more, but let go of a ball more easily.",
    },
    hingeAside: {
      label: "Hinges, from the middle",
      why: "It decides how wide the arms stand, and whether the closed tips meet.",
    },
    openAngle: {
      label: "Open arms, turned outward",
      why: "How wide a lane the arms gather from; open arms must fit through the doorway.",
    },
    closedAngle: {
      label: "Closed arms, turned outward",
      why: "The closed tips must leave less than a ball between them: only then is it caged.",
    },
    swingRate: {
      label: "Arms swing, ° in a second",
      why: "Slow arms cost time at every ball; fast ones knock it away.",
    },
    opening: { label: "Scoop, width at its tips", why: "How much the scoop takes in, in one lane." },
    depth: {
      label: "Scoop, depth",
      why: "A ball stays in a turn only where the scoop is deeper than the ball’s radius.",
    },
    sideThickness: {
      label: "Scoop, thickness of its sides",
      why: "Thick sides keep the scoop away from balls that lie at a wall.",
    },
    gauge: {
      label: "Between the middles of its tracks",
      why: "From it the robot works out how far the tracks must run for a turn.",
    },
    trackContact: {
      label: "Track on the floor (0: two wheels)",
      why: "Long tracks resist being turned: the robot may not straighten itself at a wall.",
    },
    wheelDiameter: {
      label: "Wheel diameter",
      why: "From it the robot works out how far it drives; it is used in the coder’s steps.",
    },
    topSpeed: {
      label: "Fastest straight on",
      why: "Fast robots get more done before time is up, but hit balls harder.",
    },
    turnRate: {
      label: "Fastest turn, ° in a second",
      why: "Turns take much of a run’s time; a fast one throws balls out of the pusher.",
    },
    accel: {
      label: "Gains or loses, mm/s in a second",
      why: "It costs time in every move; braking hard lets a ball roll on ahead.",
    },
    mass: {
      label: "Mass",
      why: "A heavy robot is not stopped by balls that it squeezes against a wall.",
    },
    traction: {
      label: "Grip forward",
      why: "Without grip the robot cannot press itself straight at a wall. Tilt a board with the robot on it: grip is rise over run when it begins to slide.",
    },
    lateral: {
      label: "Grip sideways",
      why: "Much grip sideways keeps it on its way, and makes it harder to be turned straight at a wall.",
    },
    pusherFriction: {
      label: "Friction ball on pusher",
      why: "A pusher that grips drags balls along a wall with it, or jams them there.",
    },
    pusherBounce: {
      label: "Bounce off the pusher",
      why: "What bounces off runs ahead of the robot, and sometimes away.",
    },
    distanceMean: {
      label: "After 1 m it is too far by (short: −)",
      why: "What is always off by the same can be put right in the code: until then every lane ends elsewhere.",
    },
    curvatureMean: {
      label: "After 1 m it points left by (right: −)",
      why: "A robot that drives a bend leaves its lane and misses what lies at its end.",
    },
    turnMean: {
      label: "After ten quarter turns too far by (short: −)",
      why: "After a few turns all lanes lie askew, until it straightens itself at a wall.",
    },
    distanceSd: {
      label: "Too far or short, give or take",
      why: "It says how sure the number before it is from one run to the next.",
    },
    curvatureSd: {
      label: "Pointing aside, give or take",
      why: "On one day it bends left, on another right: no routine can count on either.",
    },
    turnSd: {
      label: "Ten quarter turns, give or take",
      why: "The larger it is, the more a routine gains by straightening at walls.",
    },
    distanceNew: {
      label: "1 m differs from try to try by",
      why: "New in every move, it cannot be put right in the code; only shorter ways help.",
    },
    curvatureNew: {
      label: "After 1 m it points off by",
      why: "Long lanes fan out by this; it is what a gyro does away with.",
    },
    turnNew: {
      label: "Every turn differs by",
      why: "Every turn adds it once, so routines with few turns stay truer.",
    },
    turnShareNew: {
      label: "… and a long one by this share more",
      why: "A half turn is worse than two degrees: the error grows with the turn.",
    },
    along: {
      label: "Beside the doorway’s middle (left or down: −)",
      why: "The first lane starts from here; the robot must not stand in a post.",
    },
    inset: {
      label: "Axle inside the wall line",
      why: "How far in the robot stands when its run begins.",
    },
    heading: { label: "Turned left from straight in (right: −)", why: "The first move goes this way." },
    startOff: {
      label: "Placed off by",
      why: "Nobody puts it down exactly; all that follows is off by this, until it meets a wall.",
    },
    startTurned: {
      label: "Turned off by",
      why: "One degree at the start is 17 mm after one metre.",
    },
  },
  cornerAhead: (number: number) => `Corner ${number}, ahead`,
  cornerLeft: (number: number) => `Corner ${number}, to the left`,
  floorCornerAhead: (number: number) => `Floor corner ${number}, ahead`,
  floorCornerLeft: (number: number) => `Floor corner ${number}, to the left`,
});
