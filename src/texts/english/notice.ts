import { topic } from "../language.ts";

/** What is told beside the steps: files, faults, the drawing, work under way. */
export const noticeTexts = topic("notice", {
  repairs: (name: string, count: number) => `“${name}” needs ${count} ${count === 1 ? "repair" : "repairs"}`,
  closeList: "Close this list",
  nothingChanged:
    "Nothing was changed: the field you had open is still here. Mend the file in an editor, then open it again.",
  wholeFile: "whole file",
  foundAllowed: (got: string, expected: string) => `Found: ${got}. Allowed: ${expected}.`,
  letGo: "Let go to open the project file",
  secondsAllowed: (seconds: number) => `${seconds} s allowed`,
  details: "Details",
  workAbout: "it takes so long",
  workWhy:
    "The share is that of the runs that are to be made; the seconds left follow from how fast they have gone so far.",
  whatIsLeftOut: "What the model leaves out",
  leftOut: "Left out",
  trustLess: "So trust less",
  allRight: "All right",
  keepsNothing: (why: string) =>
    `This browser keeps nothing at the moment (${why}). Save your project as a file before you close the page.`,
  damaged: (name: string, why: string) =>
    `The stored project “${name}” is damaged: ${why} It was put aside as it is.`,
  saveRest: "Save what is there",
  throwAway: "Throw it away",
  toMend: (count: number, first: string) =>
    `${count} ${count === 1 ? "thing" : "things"} to mend; until then the drawing and the runs keep to the last sound state. ${first}`,
  tour: "Tour",
  tourAt: (stop: number, stops: number) => `Tour, ${stop} of ${stops}`,
  nextStop: "Next stop",
  begin: "Begin",
  noTour: "No tour",
  cancel: "Cancel",
  secondsLeft: (seconds: number) => `, about ${seconds} s left`,
  paused: ", paused",
  goOn: "Go on",
  pause: "Pause",
  noDrawing: (why: string) => `The drawing could not be opened: ${why}`,
  drawing: (words: string) => `Drawing. ${words}`,
  drawingOfZone: "Drawing of the zone",
  theLink: "The link",
  parted: (name: string, now: string) =>
    `“${name}” was changed or thrown away in another tab. That stays as it is; what you do here is now kept as “${now}”.`,
  tourTitle: {
    routines: "Routines are being tried",
    watch: "Watch one",
    weak: "See where it fails",
    robot: "Put in your robot",
    zone: "Put in your zone",
  },
  tourWords: {
    routines:
      "For the example, routines are worked out and run hundreds of times, each time with the balls elsewhere. The best stands first; its way is on the drawing.",
    watch: "Press Play. Then look at a run that failed: which ball got away, and when?",
    weak: "The map shows from where balls do not get home. Point at it to read it.",
    robot: "Measure your robot and how far it drifts. All routines are ranked anew while you type.",
    zone: "Drag the walls, the doorway and the wedge until they are like yours. From now on it is your project: it is kept in this browser by itself.",
  },
});
