import { topic } from "../language.ts";

/** What a change brings and costs. */
export const fixTexts = topic("fix", {
  gain: (value: string, low: string, high: string) => `${value} of 100 runs (${low} to ${high})`,
  /** "0.65 (0.52 to 0.78)" balls a run. */
  share: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  costs: (seconds: number) => `costs ${seconds} s`,
  saves: (seconds: number) => `saves ${seconds} s`,
  unsure: "; too close to call",
  move: (number: number) => `move ${number}`,
  moves: (from: number, to: number) => `moves ${from} to ${to}`,
  tooCloseSentence: "Too close to call.",
});
