import { topic } from "../language.ts";

/** What a field wants and how a choice is named. */
export const fieldTexts = topic("field", {
  why: "why?",
  allowed: (words: string) => `Allowed: ${words}.`,
  isNot: (value: unknown, wanted: string) => `“${value}” is not ${wanted}.`,
  wanted: {
    length: "a length, like 900 mm, 90 cm or 0.9 m",
    angle: "an angle in degrees, like 45",
    speed: "a speed, like 200 mm/s or 20 cm/s",
    mass: "a mass, like 800 g or 0.8 kg",
    time: "a time, like 120 s or 2 min",
    temperature: "a temperature, like 20 °C",
    share: "a share, like 5 %",
    plain: "a number, like 0.3",
  },
});
