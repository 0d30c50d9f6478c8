import { topic } from "../language.ts";

/** What follows from the robot's measures in its zone. */
export const robotFactTexts = topic("robotFact", {
  doorway: "Does it fit through the doorway?",
  spare: (width: string, doorway: string, side: string) =>
    `It is ${width} wide, the doorway ${doorway}: ${side} to spare on each side.`,
  tooWide: (width: string, doorway: string) =>
    `It is ${width} wide, the doorway ${doorway}: it cannot drive in straight.`,
  closedWidth: (width: string) => `With closed arms it is ${width} wide.`,
  turn: "Can it turn beside a wall?",
  turnBack: (reach: string, back: string) =>
    `To turn on the spot, the middle between its wheels must be ${reach} from every wall; after touching a wall with its front it must back up ${back} first.`,
  turnNowhere: (reach: string) =>
    `To turn on the spot, the middle between its wheels must be ${reach} from every wall, and there is no such place in this zone.`,
  carry: "Does it hold a ball in a turn?",
  shallow:
    "No: its pusher is less deep than a ball’s radius. A ball that lies still is pushed on, but a rolling ball slides off sideways when it turns.",
  caged: (rate: string) => `With closed arms at any speed; with open ones up to about ${rate} a second.`,
  openCage: (gap: string, ball: string) =>
    `Closed, its arms leave ${gap} between their tips: a ball of ${ball} gets out. Turned farther inward they would cage it, and routines that carry balls could take part.`,
  always: "Yes, even when it turns as fast as it can.",
  upTo: (rate: string) => `Up to about ${rate} a second; when it turns faster, the ball runs out forward.`,
  brake: "Does it keep a ball when it brakes?",
  brakeAlways: "Yes, even from its top speed.",
  brakeUpTo: (speed: string) => `Up to about ${speed}; when it brakes from more, the ball rolls on ahead.`,
  wedge: "Can it push a ball onto the wedge?",
  shortOfWedge: (ball: string, short: string) =>
    `No: what stands on the floor (dashed) reaches too far ahead. The wedge’s edge stops it while a ball of ${ball} still lacks ${short}; then the ball gets there only if it rolls on by itself. Draw that outline again, or say that the robot can drive up onto the wedge.`,
  square: "Can it square up against a wall?",
  squareBoth: (half: string, lever: string) =>
    `Yes, with its front and with its back: their corners are ${half} or more off the middle; its tracks need ${lever} to be turned straight.`,
  squareFront: (half: string, lever: string) =>
    `Yes, with its front: its front corners are ${half} off the middle; its tracks need ${lever} to be turned straight. With its back it stops crooked.`,
  squareBack: (half: string, lever: string) =>
    `Only with its back: its rear corners are ${half} off the middle; its tracks need ${lever} to be turned straight. With its front it stops crooked.`,
  squareNot: (half: string, lever: string) =>
    `No: its corners are at most ${half} off the middle; its tracks need ${lever} to be turned straight, so it stops crooked.`,
});
