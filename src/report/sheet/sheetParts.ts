import { ballsOf, type Project } from "../../model/project.ts";
import { withWedgeIn } from "../../model/wedgeCorner.ts";
import type { Rate } from "../../num/interval.ts";
import { sheetProofTexts as t } from "../../texts/english/sheetProof.ts";
import { escaped, svgOf } from "../charts/svg.ts";
import { timeChart } from "../charts/timeChart.ts";
import { limits, limitsAdvice } from "../limits.ts";
import { rangeWords, rateWords } from "../rateWords.ts";
import { stopWords } from "../weakWords.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";
import { trialCommand } from "./trialCommand.ts";
import { drivenWay, plannedWay, type Way } from "./way.ts";
import { zonePicture } from "./zonePicture.ts";

/** Rows of lists on two pages, and on one. */
const ALTERNATIVE_ROWS = { 1: 3, 2: 5 } as const;
/** Limits named on one page or to visitors: the ones that matter to every routine. */
const FEW_LIMITS = [5, 7, 9] as const;

export function taskPart(facts: SheetFacts, { steps }: SheetChoice): string {
  const { project, routine, durationS, evidence } = facts;
  const { zone, rules, robot } = project;
  const balls = ballsOf(project).length;
  const { example } = evidence;
  const picture = svgOf(
    zonePicture(shownProject(facts), wayOf(facts), "The zone and the routine's way"),
    "way",
  );
  const task = `A zone of ${zone.widthMm} × ${zone.heightMm} mm, ${balls} ${balls === 1 ? "ball" : "balls"} to bring onto the wedge (hatched) within ${rules.timeLimitS} s.`;
  const where = steps ? "the steps in the appendix" : "its moves";
  const way =
    example === null
      ? `${escaped(robot.name)} takes ${durationS.toFixed(0)} s for ${routine.moves.length} moves; the numbers on its way are those of ${where}.`
      : `${escaped(t.decides(robot.name, example.index, example.home, balls))} ${t.numbers} ${steps ? t.inAppendix : t.asListed}`;
  return `<p>${task} ${way}</p><figure>${picture}</figure>`;
}

/** Of a routine that decides as it goes, the way of the run that is shown. */
export function wayOf({ project, routine, evidence }: SheetFacts): Way {
  return evidence.example === null
    ? plannedWay(project, routine.moves)
    : drivenWay(evidence.example.recording);
}

/** The project with the wedge where it was in the run that is shown. */
function shownProject({ project, evidence }: SheetFacts): Project {
  const corner = evidence.example?.recording.corner;
  return corner === undefined ? project : withWedgeIn(project, corner);
}

export function whyPart(facts: SheetFacts, { pages, audience }: SheetChoice): string {
  const { durationS, routine, evidence } = facts;
  const { alternatives, summary } = evidence;
  const row = (label: string, rate: Rate, seconds: string): string =>
    `<tr><td>${escaped(label)}</td><td class="number">${rateWords(rate)}</td><td class="range">${rangeWords(rate)}</td><td class="number">${seconds}</td></tr>`;
  const shown = alternatives.slice(0, ALTERNATIVE_ROWS[pages]);
  const left = alternatives.length - shown.length;
  const words =
    audience === "visitors"
      ? "We let every way of driving search the same places: same balls, same luck. Where the ranges overlap widely, the order may be chance."
      : "These were tried on the same placements of the balls, with the same luck. Where the ranges overlap widely the order may be chance.";
  const more = left > 0 ? `<p class="small">${left} other patterns did no better than these.</p>` : "";
  return `<p>${words}</p><table><thead><tr><th>routine</th><th>every ball home in</th><th>range</th><th>takes</th></tr></thead><tbody>${row(`This one: ${routine.label}`, summary.successRate, takes(durationS, routine.program !== undefined))}${shown.map((each) => row(each.label, each.successRate, takes(each.durationS, each.decides))).join("")}</tbody></table>${more}`;
}

function takes(seconds: number, decides: boolean): string {
  return decides ? t.about(seconds.toFixed(0)) : `${seconds.toFixed(0)} s`;
}

export function evidencePart({ evidence, project, routine }: SheetFacts): string {
  const { failings, summary } = evidence;
  const balls = ballsOf(project).length;
  return `<p>On average ${summary.meanDelivered.toFixed(2)} of ${balls} balls came home. ${escaped(stopWords(failings.stop, routine.moves.length))}</p><figure>${svgOf(timeChart(failings.time, failings.stop), "time")}<figcaption>Share of ${failings.trials} runs with so many balls home by each second; the veil is what these runs leave open.</figcaption></figure>`;
}

export function limitsPart(_: SheetFacts, { pages, audience }: SheetChoice): string {
  const whole = pages === 2 && audience === "engineers";
  const shown = whole ? limits() : limits().filter((__, i) => FEW_LIMITS.some((each) => each === i));
  const rows = shown.map(
    ({ leftOut, matters }) => `<li>${escaped(leftOut)} Trust less: ${escaped(matters)}.</li>`,
  );
  const left = limits().length - shown.length;
  const more = left > 0 ? ` ${left} more limits stand in the long sheet.` : "";
  return `<ul class="small">${rows.join("")}</ul><p>${escaped(limitsAdvice())}${more}</p>`;
}

export function replayPart(facts: SheetFacts): string {
  const command = trialCommand(facts, `--seed ${facts.seed} --index N`);
  return `<p>Run number N of the ${facts.evidence.failings.trials} above, exactly as it was counted: <code>${command}</code>, N from 0.</p><p class="small">Moving tracks and arms can pinch: fingers, hair and sleeves away. Batteries are charged under an adult’s eye. The event’s own rules and the venue’s safety rules come first.</p>`;
}
