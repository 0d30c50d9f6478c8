import type { Routine } from "../../model/routine.ts";
import { sheetTexts as t } from "../../texts/english/sheet.ts";
import { spokenLanguage } from "../../texts/language.ts";
import { escaped } from "../charts/svg.ts";
import { programLines } from "../programWords.ts";
import { rangeWords, rateWords } from "../rateWords.ts";
import { failPart } from "./failPart.ts";
import { decisionsPart, practicePart } from "./ownParts.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";
import { evidencePart, limitsPart, replayPart, taskPart, whyPart } from "./sheetParts.ts";
import { SHEET_STYLE } from "./sheetStyle.ts";

type Part = (facts: SheetFacts, choice: SheetChoice) => string;

/** Class, which is the name of its titles too, and what stands below; an empty part is left out with its title. */
const PARTS = [
  ["task", taskPart],
  ["why", whyPart],
  ["evidence", evidencePart],
  ["practice", practicePart],
  ["fails", failPart],
  ["decided", decisionsPart],
  ["limits", limitsPart],
  ["again", replayPart],
] as const satisfies readonly (readonly [keyof typeof t.titles, Part])[];

/** One or two pages for a jury as a self-contained HTML file: no script, nothing from elsewhere, prints in black and white. */
export function jurySheet(facts: SheetFacts, choice: SheetChoice): string {
  const { project, routine } = facts;
  const titles = choice.audience === "visitors" ? t.simply : t.titles;
  const parts = PARTS.map(([name, part]) => section(name, titles[name], part(facts, choice)));
  return [
    "<!doctype html>",
    `<html lang="${spokenLanguage()}"><head><meta charset="utf-8">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(t.pageTitle(project.name))}</title>`,
    `<style>${SHEET_STYLE}</style></head><body><main class="${choice.audience} pages-${choice.pages}">`,
    `<h1>${escaped(t.head(project.name))}</h1>`,
    lead(facts, choice),
    ...parts.filter((part) => part !== ""),
    ...(choice.steps
      ? [`<section class="appendix"><h2>${t.appendix}</h2>${stepList(routine)}</section>`]
      : []),
    "</main></body></html>",
    "",
  ].join("\n");
}

function lead({ routine, evidence }: SheetFacts, { audience }: SheetChoice): string {
  const { successRate } = evidence.summary;
  const [rate, range, runs] = [rateWords(successRate), rangeWords(successRate), successRate.trials];
  const words =
    audience === "visitors" ? t.leadSimply(rate, range, runs) : t.lead(routine.label, rate, range, runs);
  return `<p class="lead">${escaped(words)}</p>`;
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
