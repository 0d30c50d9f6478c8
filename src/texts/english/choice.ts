import { topic } from "../language.ts";

/** The words of the zone's choices. */
export const choiceTexts = topic("choice", {
  profile: {
    flat: "A flat mark on the floor",
    ramp: "A ramp that rises to the corner",
    shelf: "A short ramp, then level",
    tray: "A lip, then falling to the corner",
  },
  delivered: {
    centre: "when its middle is over the wedge",
    wholly: "when all of it is over the wedge",
  },
  build: { solid: "solid", hollow: "hollow" },
  ownBall: "A ball of your own",
  layout: { random: "at random, by a rule", fixed: "always on the same spots" },
});
