/** Every topic and the shape of its texts, as the English ones have it. Types only: nothing of it is loaded. */
export interface Catalogue {
  readonly number: typeof import("./english/number.ts").numberTexts;
  readonly zoneStep: typeof import("./english/zoneStep.ts").zoneStepTexts;
  readonly masthead: typeof import("./english/masthead.ts").mastheadTexts;
  readonly outline: typeof import("./english/outline.ts").outlineTexts;
  readonly shell: typeof import("./english/shell.ts").shellTexts;
}
