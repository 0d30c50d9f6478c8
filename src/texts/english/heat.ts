import { topic } from "../language.ts";

/** The map of losses on a sheet. */
export const heatTexts = topic("heat", {
  title: "Where lost balls had started",
  description:
    "The zone from above with squares on it: the larger the square, the more of the balls that start there are lost; a dot where none is, nothing where too few balls start. The table beside it has the numbers.",
  caption: (balls: number) =>
    `Where balls started that were lost: the larger the square, the more of them; a dot: none. ${balls} balls.`,
  table:
    "Of 100 balls that started in each part of the zone, so many came home; in brackets, how many balls were counted.",
  none: "no ball",
});
