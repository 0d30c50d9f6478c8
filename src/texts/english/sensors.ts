import { topic } from "../language.ts";

/** The sensors of the robot: a switch each, and their numbers. */
export const sensorsTexts = topic("sensors", {
  title: "What it senses",
  hint: "Switch on what your robot carries. Routines that look before they drive then take part in the ranking, on the same placements as all others.",
  hintCorner:
    "The wedge’s corner is drawn anew for each run: without a look at the floor no routine finds it.",
  more: (name: string) => `More: ${name}`,
  principle: "How it works",
  other: "Another sensor",
  take: (name: string) => `Take “${name}” away`,
  named: "Name",
  source: "The numbers are common practice, no source: measure your own.",
  twoEyes: "Routines look with the first distance sensor of the list.",
  slot: {
    "bump-front": {
      name: "Bump switch in front",
      use: "It tells at once that the robot has run into something: a drive to a wall then ends there.",
    },
    "bump-back": {
      name: "Bump switch behind",
      use: "The same for driving backward.",
    },
    ahead: {
      name: "Distance ahead",
      use: "It looks around and notes where balls lie: then the robot fetches them one by one.",
    },
    aside: {
      name: "Distance to the side",
      use: "Beside a wall the robot keeps its distance by it, and so its way. Let it look out from the middle: right beside a wall it is too near to read.",
    },
    gyro: {
      name: "Gyro",
      use: "It holds the direction: turns and straights drift much less.",
    },
    barrier: {
      name: "Ball in the pusher",
      use: "A light barrier across the pusher: it tells whether the ball was really caught.",
    },
    floor: {
      name: "Brightness of the floor",
      use: "It tells when the robot is over the wedge: so it finds a corner that is only known on the day.",
    },
  },
  preset: {
    "contact-switch": "A contact switch",
    "ultrasonic-echo": "Echo of a sound",
    "infrared-triangulation": "Infrared light at an angle",
    "light-time-of-flight": "Time of flight of light",
    "rate-gyro": "A rate gyro",
    "light-barrier": "A light barrier",
    "reflected-light": "Reflected light",
    own: "Numbers of your own",
  },
  number: {
    alongMm: {
      label: "Ahead of the axle",
      why: "From where it looks: it sees nothing behind what stands before it.",
    },
    acrossMm: { label: "To the left of the middle", why: "From where it looks; to the right is negative." },
    headingDeg: {
      label: "Looks to the left by",
      why: "0 is straight ahead, 90 to the left, −90 to the right.",
    },
    beamHalfDeg: {
      label: "Beam, half its width",
      why: "A wide beam misses nothing, but cannot tell two balls side by side apart.",
    },
    nearestMm: { label: "Nearest that it sees", why: "What is closer is not seen." },
    rangeMm: {
      label: "Farthest that it sees",
      why: "With a short range the robot must look from more places, which takes time.",
    },
    noiseSdMm: {
      label: "Off by, give or take",
      why: "The robot drives to where it thinks the ball is: a large error misses it.",
    },
    noiseSdFrac: {
      label: "… and by this share of the distance",
      why: "What is far away is known less well.",
    },
    missFrac: { label: "Echoes missed", why: "A ball whose echo is missed is not fetched this time." },
    readsPerS: {
      label: "Readings a second",
      why: "With few of them the robot must turn slowly, or it turns past a ball unseen.",
    },
    airC: {
      label: "Air where it drives",
      why: "An echo of sound is timed as in air of 20 °C. Sound is slower in the cold: in a hall of 10 °C everything seems 1.75 % farther, 17.5 mm at 1 m. Light does not care: leave it at 20.",
    },
    errorSdDeg: {
      label: "Every move off by",
      why: "What is left of the turning error with a gyro.",
    },
    driftSdDegPerMin: {
      label: "Drifts in a minute by",
      why: "It adds up: in a long run all lanes slowly turn.",
    },
    lengthMm: {
      label: "Length of the beam",
      why: "A ball beside the beam is not noticed.",
    },
    wrongFrac: { label: "Readings that are wrong", why: "A wrong one sends the robot off without its ball." },
  },
});
