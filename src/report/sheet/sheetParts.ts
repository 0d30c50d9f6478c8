import { ballsOf, type Project } from "../../model/project.ts";
import { withWedgeIn } from "../../model/wedgeCorner.ts";
import type { Rate } from "../../num/interval.ts";
import { sheetTexts as t } from "../../texts/english/sheet.ts";
import { sheetProofTexts as proof } from "../../texts/english/sheetProof.ts";
import { zonePictureTexts } from "../../texts/english/zonePicture.ts";
import { sizeText } from "../../texts/lengths.ts";
import { fixed, plain } from "../../texts/numbers.ts";
import { escaped, svgOf } from "../charts/svg.ts";
import { timeChart } from "../charts/timeChart.ts";
import { limits, limitsAdvice } from "../limits.ts";
import { rangeEnds, rateWords } from "../rateWords.ts";
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
  const picture = svgOf(zonePicture(shownProject(facts), wayOf(facts), zonePictureTexts.title), "way");
  const task = t.task(sizeText(zone.widthMm, zone.heightMm), balls, plain(rules.timeLimitS));
  const way =
    example === null
      ? t.way(robot.name, fixed(durationS, 0), routine.moves.length, steps)
      : `${proof.decides(robot.name, example.index, example.home, balls)} ${proof.numbers} ${steps ? proof.inAppendix : proof.asListed}`;
  return `<p>${escaped(`${task} ${way}`)}</p><figure>${picture}</figure>`;
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
    `<tr><td>${escaped(label)}</td><td class="number">${rateWords(rate)}</td><td class="range">${t.between(...rangeEnds(rate))}</td><td class="number">${seconds}</td></tr>`;
  const shown = alternatives.slice(0, ALTERNATIVE_ROWS[pages]);
  const left = alternatives.length - shown.length;
  const words = audience === "visitors" ? t.comparedSimply : t.compared;
  const more = left > 0 ? `<p class="small">${escaped(t.others(left))}</p>` : "";
  const heads = [t.heads.routine, t.heads.rate, t.heads.range, t.heads.takes].map(
    (head) => `<th>${head}</th>`,
  );
  const better = alternatives.find(({ successRate }) => successRate.low > summary.successRate.high);
  const beaten = better === undefined ? "" : `<p>${escaped(t.beaten(better.label))}</p>`;
  return `<p>${escaped(words)}</p>${beaten}<table><thead><tr>${heads.join("")}</tr></thead><tbody>${row(t.thisOne(routine.label), summary.successRate, takes(durationS, routine.program !== undefined))}${shown.map((each) => row(each.label, each.successRate, takes(each.durationS, each.decides))).join("")}</tbody></table>${more}`;
}

function takes(seconds: number, decides: boolean): string {
  return decides ? proof.about(fixed(seconds, 0)) : `${fixed(seconds, 0)} s`;
}

export function evidencePart({ evidence, project, routine }: SheetFacts): string {
  const { failings, summary } = evidence;
  const balls = ballsOf(project).length;
  const words = `${t.onAverage(fixed(summary.meanDelivered, 2), balls)} ${stopWords(failings.stop, routine.moves.length)}`;
  const chart = svgOf(timeChart(failings.time, failings.stop), "time");
  return `<p>${escaped(words)}</p><figure>${chart}<figcaption>${escaped(t.curves(failings.trials))}</figcaption></figure>`;
}

export function limitsPart(_: SheetFacts, { pages, audience }: SheetChoice): string {
  const whole = pages === 2 && audience === "engineers";
  const shown = whole ? limits() : limits().filter((__, i) => FEW_LIMITS.some((each) => each === i));
  const rows = shown.map(({ leftOut, matters }) => `<li>${escaped(t.trustLess(leftOut, matters))}</li>`);
  const left = limits().length - shown.length;
  const more = left > 0 ? ` ${t.moreLimits(left)}` : "";
  return `<ul class="small">${rows.join("")}</ul><p>${escaped(`${limitsAdvice()}${more}`)}</p>`;
}

export function replayPart(facts: SheetFacts): string {
  const command = trialCommand(facts, `--seed ${facts.seed} --index N`);
  const words = escaped(t.replay(facts.evidence.failings.trials));
  return `<p>${words} <code>${command}</code>${t.from0}</p><p class="small">${escaped(t.caution)}</p>`;
}
