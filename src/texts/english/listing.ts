import { topic } from "../language.ts";

/** Comments of a listing, and what the functions do that a team writes for it. */
export const listingTexts = topic("listing", {
  head: (robot: string, project: string, steps: number, time: string) =>
    `${robot} in ${project}; ${steps} steps, ${time}`,
  start: (inset: string, aside: string, heading: string, arms: string) =>
    `Start: the middle between the driven wheels ${inset} mm inside the line of the doorway's wall, ${aside}; facing ${heading}${arms}.`,
  inMiddle: "in the doorway's middle",
  aside: {
    left: (mm: string) => `${mm} mm to the left of the doorway's middle, seen on the drawing`,
    right: (mm: string) => `${mm} mm to the right of the doorway's middle, seen on the drawing`,
    up: (mm: string) => `${mm} mm above the doorway's middle, seen on the drawing`,
    down: (mm: string) => `${mm} mm below the doorway's middle, seen on the drawing`,
  },
  straightIn: "straight in",
  turnedIn: (isRight: boolean, deg: string) =>
    `${deg} deg to the ${isRight ? "right" : "left"} of straight in`,
  armsOpen: "; arms open",
  sides: "Left and right are the robot's own. Try it first with the tracks off the floor.",
  asSensors: "as long as its sensors make it",
  wheelDegrees: "Wheel degrees of this robot; they make up for the mean drift in its project file.",
  straight: "A straight: both wheels turn mm * WHEEL_DEG_PER_MM, each times its factor.",
  turn: "A turn: one wheel turns deg * WHEEL_DEG_PER_TURN_DEG forward, the other back.",
  atRest: (accel: string) =>
    `Every move starts and ends at rest; wheels speed up and brake at ${accel} mm/s^2.`,
  curve: "A curve: the degrees of both wheels stand behind the step.",
  addUp: "Add up every move: scan, fetch and go_to reckon from where the robot should be by now.",
  write: "Write these functions for your robot; each returns when its move is over:",
  wheels: (step: number, left: string, right: string) => `${step}: wheels ${left} and ${right} deg`,
  functions: {
    drive: "Drive straight; negative: backward. Stop at the end.",
    turn: "Turn on the spot, one wheel forward, one back; positive: left. Stop at the end.",
    curve: "Drive a curve of this length (negative: backward) that turns the robot by deg; positive: left.",
    drive_to_wall:
      "Drive straight for mm + extra_mm. A wall stops the robot on the way: keep pushing for the time the whole way takes; with a bumper on that side, stop as soon as it is pressed.",
    drive_beside:
      "As drive, beside a wall: steer gently so that distance sensor by_sensor (counted from 1, in the order of the project file) reads keep_mm; pass over readings that jump (a ball, a gap), and on the last 100 mm only straighten up.",
    drive_to_wall_beside:
      "As drive_to_wall, beside another wall: until it touches the wall ahead, steer as drive_beside does.",
    wait: "Stand still.",
    open_arms: "Run the arms' motor outward for s while the robot stands still.",
    close_arms: "Run the arms' motor inward for s while the robot stands still.",
    scan: "Turn on the spot by deg (positive: left) while the distance sensor reads; put right where the robot should be by now (place and heading) until the walls of the map fit what was read of them; then forget the old notes and note the place of every ball made out: nearer than the walls are, and not on the wedge in this corner.",
    fetch: (knockS: number) =>
      `Of the noted balls take the one that takes least time (${knockS} s more for each other noted ball touched on the way) and strike it off; drive behind it, push it onto the wedge in this corner, back off. With a light barrier: give up as soon as the ball is not in the pusher. If none can be fetched, forget all notes.`,
    go_to:
      "Drive to a place of the zone (mm from its lower left inside corner, x right, y up) and face deg there (0: along x; positive: left). Touch no wall, and not the wedge in this corner. Where there is no way, stay.",
  },
  readings: {
    balls_noted: "How many balls are on the notes: left there by scan, not struck off by fetch.",
    ball_in_pusher: "Whether the light barrier was broken at any time during the last move.",
    over_wedge: "Whether the floor sensor reads the wedge below it now.",
    front_bumped: "Whether the last move ran into something with its front bumper.",
    back_bumped: "Whether the last move ran into something with its back bumper.",
    distance_mm:
      "What this sensor reads now, mm; 100000 where no echo comes back. Sensors are counted from 1, in the order of the project file.",
    seconds_left: "Seconds until the time limit.",
  },
});
