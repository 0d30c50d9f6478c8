import { changedText, shippedText } from "../../../support/projectFiles.ts";

/** A bad file, and the one issue it must give: code and path. */
export interface BadFile {
  readonly what: string;
  readonly code: string;
  readonly path: string;
  readonly text: string;
}

type Change = Parameters<typeof changedText>[0];

export const bad = (code: string, path: string, what: string, change: Change, name?: string): BadFile => ({
  what,
  code,
  path,
  text: changedText(change, name),
});
export const raw = (code: string, path: string, what: string, text: string): BadFile => ({
  what,
  code,
  path,
  text,
});
const usual = shippedText("usual-zone.json");
/** Text of the default project after replacing one piece of it. */
export const replaced = (from: string, to: string): string => {
  if (!usual.includes(from)) throw new Error(`the default project holds no ${from}`);
  return usual.replace(from, to);
};
