import { notebookTexts } from "../../texts/english/notebook.ts";
import { sheetTexts as t } from "../../texts/english/sheet.ts";
import { escaped } from "../charts/svg.ts";
import { brierWords, daysWords, driftFitWords, updatedWords, verdictWords } from "../practiceWords.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";

/** The parts of a sheet that only the team itself can fill: its practice and its decisions. */

/** Decisions for which one page and two have room. */
const DECISIONS = { 1: 1, 2: 4 } as const;

/** What practice on the real floor said. */
export function practicePart({ practice }: SheetFacts, { audience, pages }: SheetChoice): string {
  if (practice === null) return "";
  const { assessment, fit } = practice;
  const whole = audience === "engineers" && pages === 2;
  const words = [
    verdictWords(assessment),
    ...(fit === null ? [] : [driftFitWords(fit)]),
    ...(assessment.days === null || pages === 1 ? [] : [daysWords(assessment.days)]),
    updatedWords(assessment),
    ...(whole ? [brierWords(assessment)] : []),
  ];
  return `<p>${words.map(escaped).join(" ")}</p>`;
}

/** The notebook, oldest first; the last ones where there is no room for all. */
export function decisionsPart({ decisions }: SheetFacts, { audience, pages }: SheetChoice): string {
  if (decisions.length === 0) return "";
  const shown = decisions.slice(-DECISIONS[pages]);
  const rows = shown.map(({ date, title, figures, reason }) => {
    const told = audience === "visitors" || pages === 1 ? figures.slice(0, 1) : figures;
    const why = reason === "" ? "" : ` <em>${escaped(reason)}</em>`;
    return `<dt>${escaped(notebookTexts.entry(date, title))}</dt><dd>${told.map(escaped).join(" ")}${why}</dd>`;
  });
  const left = decisions.length - shown.length;
  const more = left > 0 ? `<p class="small">${escaped(t.earlier(left))}</p>` : "";
  return `<dl>${rows.join("")}</dl>${more}`;
}
