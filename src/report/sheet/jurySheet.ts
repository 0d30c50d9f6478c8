import type { Routine } from "../../model/routine.ts";
import { escaped } from "../charts/svg.ts";
import { programLines } from "../programWords.ts";
import { rangeWords, rateWords } from "../rateWords.ts";
import { failPart } from "./failPart.ts";
import { decisionsPart, practicePart } from "./ownParts.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";
import { evidencePart, limitsPart, replayPart, taskPart, whyPart } from "./sheetParts.ts";
import { SHEET_STYLE } from "./sheetStyle.ts";

type Part = (facts: SheetFacts, choice: SheetChoice) => string;

/** Class, titles for engineers and for visitors, and what stands below; an empty part is left out with its title. */
const PARTS: readonly (readonly [string, string, string, Part])[] = [
  ["task", "The task and the way", "What our robot does", taskPart],
  ["why", "Why this routine", "Why this way and no other", whyPart],
  ["evidence", "The evidence", "How often it works", evidencePart],
  ["practice", "Practice runs against the model", "On the real floor", practicePart],
  ["fails", "Where it fails", "What still goes wrong", failPart],
  ["decided", "What was decided, and why", "What we changed on the way", decisionsPart],
  ["limits", "What the model leaves out", "What a computer cannot know", limitsPart],
  ["again", "Run it again", "See for yourself", replayPart],
];

/** One or two pages for a jury as a self-contained HTML file: no script, nothing from elsewhere, prints in black and white. */
export function jurySheet(facts: SheetFacts, choice: SheetChoice): string {
  const { project, routine } = facts;
  const forVisitors = choice.audience === "visitors";
  const parts = PARTS.map(([name, forEngineers, simply, part]) =>
    section(name, forVisitors ? simply : forEngineers, part(facts, choice)),
  );
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(project.name)}: our routine</title>`,
    `<style>${SHEET_STYLE}</style></head><body><main class="${choice.audience} pages-${choice.pages}">`,
    `<h1>${escaped(project.name)}: how our robot brings the balls home</h1>`,
    lead(facts, choice),
    ...parts.filter((part) => part !== ""),
    ...(choice.steps
      ? [`<section class="appendix"><h2>Appendix: the steps</h2>${stepList(routine)}</section>`]
      : []),
    "</main></body></html>",
    "",
  ].join("\n");
}

function lead({ routine, evidence }: SheetFacts, { audience }: SheetChoice): string {
  const { successRate } = evidence.summary;
  const rate = `In ${rateWords(successRate)} (${rangeWords(successRate)})`;
  return audience === "visitors"
    ? `<p class="lead">${rate} it brings every ball home. We know because a computer tried it ${successRate.trials} times, with the balls elsewhere each time, before our robot drove it once.</p>`
    : `<p class="lead">${escaped(routine.label)}. ${rate} every ball was home, in ${successRate.trials} simulated runs with the balls elsewhere each time and the robot drifting as its project file says.</p>`;
}

/** Numbered as on the picture; lines of blocks stand further in. */
function stepList({ moves, program }: Routine): string {
  const lines = programLines(program ?? moves).map(({ number, depth, words }) => {
    const mark = number === 0 ? ' class="unnumbered"' : ` value="${number}"`;
    return `<li${mark} style="margin-left: ${4 * depth}mm">${escaped(words)}</li>`;
  });
  return `<ol class="steps${program === undefined ? "" : " blocks"}">${lines.join("")}</ol>`;
}

function section(name: string, title: string, body: string): string {
  return body === "" ? "" : `<section class="${name}"><h2>${escaped(title)}</h2>${body}</section>`;
}
