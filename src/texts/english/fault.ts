import { topic } from "../language.ts";

/** Why a computation came to nothing. */
export const faultTexts = topic("fault", {
  ended: (why: string) => `a worker ended before it answered: ${why}`,
  notLoaded: "its program could not be loaded",
  unreadable: "its answer could not be read",
  noAnswer: "no answer",
});
