import { topic } from "../language.ts";

/** Making a video clip, and the captions in it. */
export const clipTexts = topic("clip", {
  title: "A video clip",
  cannot:
    "This browser cannot write videos. Open the page in a newer one to save a clip; everything else works here.",
  show: "Show",
  one: (run: number) => `run ${run}, the one on show`,
  many: (runs: number) => `${runs} runs at once`,
  make: (kind: string) => `Make a clip and save it as ${kind}`,
  working: "Running and drawing",
  saved: (kind: string, seconds: string, kilobytes: number) =>
    `Saved as ${kind}: ${seconds} s, ${kilobytes} kB. Routine, rate and run numbers stand in the picture, below the zone.`,
  rate: (share: string, range: string, trials: number) =>
    `${share} bring every ball home (${range}; ${trials} simulated).`,
  these: (worked: number, runs: number, range: string) =>
    `${worked} of these ${runs} runs bring every ball home (of 100, ${range}).`,
  run: (run: number, seed: number, seconds: string, speed: number) =>
    `Run ${run}, seed ${seed}, at ${seconds} s (${speed} × speed).`,
  runs: (first: number, last: number, seed: number, seconds: string, speed: number) =>
    `Runs ${first} to ${last}, seed ${seed}, at ${seconds} s (${speed} × speed).`,
  move: (number: number, words: string) => `Move ${number}: ${words}.`,
  end: (home: number, balls: number) =>
    `The end: ${home} of ${balls} ${balls === 1 ? "ball" : "balls"} home.`,
  noVideo: "this browser cannot write videos; another one can",
  noPictures: "this browser cannot draw the pictures of a video",
  empty: "the video came out empty",
  soFar: (home: number) => `Every ball is home in ${home} by now.`,
});
