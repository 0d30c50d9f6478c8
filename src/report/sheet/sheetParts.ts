import { ballsOf } from "../../model/project.ts";
import type { Rate } from "../../num/interval.ts";
import { lossChart } from "../charts/lossChart.ts";
import { escaped, svgOf } from "../charts/svg.ts";
import { timeChart } from "../charts/timeChart.ts";
import { limits, limitsAdvice } from "../limits.ts";
import { rangeWords, rateWords } from "../rateWords.ts";
import { lossCountWords, placementText, stopWords } from "../weakWords.ts";
import type { SheetChoice, SheetFacts } from "./sheetFacts.ts";
import { zonePicture } from "./zonePicture.ts";

/** Rows of lists on two pages, and on one. */
const LOSS_ROWS = { 1: 2, 2: 4 } as const;
const ALTERNATIVE_ROWS = { 1: 3, 2: Number.POSITIVE_INFINITY } as const;
/** Limits named on one page or to visitors: the ones that matter to every routine. */
const FEW_LIMITS = [5, 7, 9] as const;

export function taskPart({ project, routine, durationS }: SheetFacts, { steps }: SheetChoice): string {
  const { zone, rules, robot } = project;
  const balls = ballsOf(project).length;
  const picture = svgOf(zonePicture(project, routine.moves, "The zone and the routine's way"), "way");
  const where = steps ? "the steps in the appendix" : "its moves";
  return `<p>A zone of ${zone.widthMm} × ${zone.heightMm} mm, ${balls} ${balls === 1 ? "ball" : "balls"} to bring onto the wedge (hatched) within ${rules.timeLimitS} s. ${escaped(robot.name)} takes ${durationS.toFixed(0)} s for ${routine.moves.length} moves; the numbers on its way are those of ${where}.</p><figure>${picture}</figure>`;
}

export function whyPart(facts: SheetFacts, { pages, audience }: SheetChoice): string {
  const { durationS, routine, evidence } = facts;
  const { alternatives, summary } = evidence;
  const row = (label: string, rate: Rate, seconds: number): string =>
    `<tr><td>${escaped(label)}</td><td class="number">${rateWords(rate)}</td><td class="range">${rangeWords(rate)}</td><td class="number">${seconds.toFixed(0)} s</td></tr>`;
  const shown = alternatives.slice(0, ALTERNATIVE_ROWS[pages]);
  const left = alternatives.length - shown.length;
  const words =
    audience === "visitors"
      ? "We let every way of driving search the same places: same balls, same luck. Where the ranges overlap widely, the order may be chance."
      : "These were tried on the same placements of the balls, with the same luck. Where the ranges overlap widely the order may be chance.";
  const more = left > 0 ? `<p class="small">${left} other patterns did no better than these.</p>` : "";
  return `<p>${words}</p><table><thead><tr><th>routine</th><th>every ball home in</th><th>range</th><th>takes</th></tr></thead><tbody>${row(`This one: ${routine.label}`, summary.successRate, durationS)}${shown.map((each) => row(each.label, each.successRate, each.durationS)).join("")}</tbody></table>${more}`;
}

export function evidencePart({ evidence, project, routine }: SheetFacts): string {
  const { failings, summary } = evidence;
  const balls = ballsOf(project).length;
  return `<p>On average ${summary.meanDelivered.toFixed(2)} of ${balls} balls came home. ${escaped(stopWords(failings.stop, routine.moves.length))}</p><figure>${svgOf(timeChart(failings.time, failings.stop), "time")}<figcaption>Share of ${failings.trials} runs with so many balls home by each second; the veil is what these runs leave open.</figcaption></figure>`;
}

export function failPart({ evidence, project, routine }: SheetFacts, { pages }: SheetChoice): string {
  const { losses, trials } = evidence.failings;
  const named = losses
    .slice(0, LOSS_ROWS[pages])
    .map((loss) => `<li>${loss.balls} balls ${escaped(lossCountWords(loss, routine.moves))}</li>`)
    .join("");
  const [worst] = evidence.weakness.beatenDrifting;
  const hard =
    worst === undefined
      ? ""
      : `<p>The hardest placement found (x,y of each ball in mm, ${escaped(placementText(worst.placement))}): every ball home in ${rateWords(worst.successRate)} (${rangeWords(worst.successRate)}).</p>`;
  if (pages === 1) return `<ul>${named}</ul>${hard}`;
  const picture =
    worst === undefined
      ? ""
      : `<figure class="half">${svgOf(zonePicture(project, [], "The hardest placement", worst.placement), "hard")}</figure>`;
  return `<figure class="losses">${svgOf(lossChart(losses, trials), "losses")}</figure>${picture}<ul>${named}</ul>${hard}`;
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

export function replayPart({ routine, seed, projectArgument, evidence }: SheetFacts): string {
  const project = projectArgument === "" ? "" : ` ${projectArgument}`;
  return `<p>Run number N of the ${evidence.failings.trials} above, exactly as it was counted: <code>wedgeward trial${escaped(project)} --routine ${escaped(routine.id)} --seed ${seed} --index N</code>, N from 0.</p><p class="small">Moving tracks and arms can pinch: fingers, hair and sleeves away. Batteries are charged under an adult’s eye. The event’s own rules and the venue’s safety rules come first.</p>`;
}
