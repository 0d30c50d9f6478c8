import type { Catalogue } from "../catalogue.ts";
import { mastheadTexts } from "./masthead.ts";
import { numberTexts } from "./number.ts";
import { outlineTexts } from "./outline.ts";
import { shellTexts } from "./shell.ts";
import { zoneStepTexts } from "./zoneStep.ts";

/** All German texts: one chunk, fetched when German is first spoken. */
export const german: Catalogue = {
  number: numberTexts,
  zoneStep: zoneStepTexts,
  masthead: mastheadTexts,
  outline: outlineTexts,
  shell: shellTexts,
};
