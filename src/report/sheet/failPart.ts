import type { HardCase } from "../../jobs/hardCase.ts";
import { linesOf } from "../../model/program.ts";
import { heatParts } from "../../score/heatMap.ts";
import { heatTexts } from "../../texts/english/heat.ts";
import { sheetTexts } from "../../texts/english/sheet.ts";
import { sheetProofTexts as t } from "../../texts/english/sheetProof.ts";
import { lossChart } from "../charts/lossChart.ts";
import { escaped, svgOf } from "../charts/svg.ts";
import { outOf100, rangeWords, rateWords } from "../rateWords.ts";
import { lossCountWords, placementText } from "../weakWords.ts";
import { heatPicture } from "./heatPicture.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";
import { trialCommand } from "./trialCommand.ts";
import { NO_WAY } from "./way.ts";
import { zonePicture } from "./zonePicture.ts";

/** Rows of losses on two pages, and on one. */
const LOSS_ROWS = { 1: 2, 2: 4 } as const;

/** Where and why balls are lost: by reason and move, by where they started, and on the hardest placement. */
export function failPart(facts: SheetFacts, { pages }: SheetChoice): string {
  const { evidence, project } = facts;
  const { failings, hardest } = evidence;
  const { losses, trials } = failings;
  const lines = linesOf(facts.routine.program ?? facts.routine.moves);
  const named = losses
    .slice(0, LOSS_ROWS[pages])
    .map((loss) => `<li>${escaped(sheetTexts.lost(loss.balls, lossCountWords(loss, lines)))}</li>`)
    .join("");
  const hard = hardest === null ? "" : `<p>${hardWords(facts, hardest, pages)}</p>`;
  if (pages === 1) return `<ul>${named}</ul>${heatFigure(facts)}${hard}`;
  const picture =
    hardest === null
      ? ""
      : `<figure class="half">${svgOf(zonePicture(project, NO_WAY, sheetTexts.hardest, hardest.placement), "hard")}</figure>`;
  return `<div class="beside"><figure>${svgOf(lossChart(losses, trials), "losses")}</figure><ul>${named}</ul></div><div class="beside">${heatFigure(facts)}${heatTable(facts)}</div>${picture}${hard}`;
}

function heatFigure({ project, evidence }: SheetFacts): string {
  const { map, balls, trials } = evidence.failings;
  const caption = escaped(heatTexts.caption(balls * trials));
  return `<figure class="heat">${svgOf(heatPicture(project, map), "heat")}<figcaption>${caption}</figcaption></figure>`;
}

/** The counts behind the picture, laid out as the zone is. */
function heatTable({ evidence }: SheetFacts): string {
  const rows = heatParts(evidence.failings.map).map((row) => {
    const cells = row.map(({ balls, delivered }) =>
      balls === 0
        ? `<td>${escaped(heatTexts.none)}</td>`
        : `<td><b>${outOf100(delivered / balls)}</b> (${balls})</td>`,
    );
    return `<tr>${cells.join("")}</tr>`;
  });
  return `<table class="parts"><caption>${escaped(heatTexts.table)}</caption><tbody>${rows.join("")}</tbody></table>`;
}

/** How often it fails there, at what, and the command that shows it. */
function hardWords(facts: SheetFacts, hard: HardCase, pages: 1 | 2): string {
  const { placement, successRate, losses, trials, balls, seed } = hard;
  const lines = linesOf(facts.routine.program ?? facts.routine.moves);
  const places = placementText(placement);
  const [most] = losses;
  const head = t.hard(places, rateWords(successRate), rangeWords(successRate));
  if (most === undefined) return escaped(`${head} ${t.hardNone(trials)}`);
  const told = escaped(`${head} ${t.hardLoss(most.balls, balls, lossCountWords(most, lines))}`);
  const index = most.examples[0]?.index ?? 0;
  if (pages === 1) return told;
  const command = trialCommand(facts, `--seed ${seed} --index ${index} --at ${places}`);
  return `${told} ${escaped(t.hardAgain(index))} <code>${command}</code>`;
}
