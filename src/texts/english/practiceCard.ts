import { topic } from "../language.ts";

/** The card that is printed and filled in by hand. */
export const practiceCardTexts = topic("practiceCard", {
  title: (routine: string) => `Practice card: ${routine}`,
  head: (project: string, routine: string) => `${project}: practice runs of ${routine}`,
  places:
    "Each place is the middle of a ball: mm from the left wall, mm from the lower wall, seen from above as in the drawing. Those marked hard are the ones on which the routine did worst in simulated runs.",
  day: "Day: ______________________",
  run: "run",
  ball: (number: number) => `ball ${number}`,
  home: "home",
  time: "time",
  happened: "what happened",
  hard: "hard",
  ofBalls: (balls: number) => `__ of ${balls}`,
  caution:
    "Fingers, hair and sleeves away from moving tracks and arms; the event’s rules and the venue’s rules come first.",
});
