import { topic } from "../language.ts";

/** Names of the balls and sensors that the program knows, by preset; files hold the English ones. */
export const presetTexts = topic("preset", {
  balls: {
    "table-tennis": "Table-tennis ball",
    golf: "Golf ball",
    squash: "Squash ball",
    tennis: "Tennis ball",
    racquetball: "Racquetball",
    pool: "Pool ball",
    snooker: "Snooker ball",
    perforated: "Perforated plastic ball",
    steel: "Steel ball, 1 inch",
  },
  sensors: {
    "contact-switch": "Contact switch",
    "ultrasonic-echo": "Ultrasonic echo",
    "infrared-triangulation": "Infrared triangulation",
    "light-time-of-flight": "Time of flight of light",
    "rate-gyro": "Heading gyro",
    "light-barrier": "Light barrier",
    "reflected-light": "Reflected light",
  },
  usual: { back: "Contact switch at the back", left: "Distance to the left" },
});
