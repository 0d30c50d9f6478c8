import type { Failings, Weakness } from "../../jobs/weakness.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import type { Rate } from "../../num/interval.ts";
import { lossChart } from "../charts/lossChart.ts";
import { escaped, svgOf } from "../charts/svg.ts";
import { timeChart } from "../charts/timeChart.ts";
import { LIMITS, LIMITS_ADVICE } from "../limits.ts";
import { rangeWords, rateWords } from "../rateWords.ts";
import { lossCountWords, placementText, stopWords } from "../weakWords.ts";
import { SHEET_STYLE } from "./sheetStyle.ts";
import { zonePicture } from "./zonePicture.ts";

/** Another routine on the same placements. */
export interface Alternative {
  readonly label: string;
  readonly successRate: Rate;
  readonly durationS: number;
}

/** All a sheet tells; every claim on it is one of these numbers. */
export interface SheetFacts {
  readonly project: Project;
  readonly routine: Routine;
  readonly durationS: number;
  readonly seed: number;
  readonly successRate: Rate;
  readonly meanDelivered: number;
  readonly weakness: Weakness;
  readonly failings: Failings;
  readonly alternatives: readonly Alternative[];
  /** Each move in words. */
  readonly steps: readonly string[];
  /** How the project was named on the command line; "" for the default one. */
  readonly projectArgument: string;
}

/** Losses named in words. */
const LOSS_ROWS = 4;

/** One or two pages for a jury as a self-contained HTML file: no script, nothing from elsewhere, prints in black and white. */
export function jurySheet(facts: SheetFacts): string {
  const { project, routine } = facts;
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(project.name)}: our routine</title>`,
    `<style>${SHEET_STYLE}</style></head><body><main>`,
    `<h1>${escaped(project.name)}: how our robot brings the balls home</h1>`,
    `<p class="lead">${escaped(routine.label)}. In ${rateWords(facts.successRate)} (${rangeWords(facts.successRate)}) every ball was home, in ${facts.successRate.trials} simulated runs with the balls elsewhere each time and the robot drifting as its project file says.</p>`,
    section("The task and the way", taskPart(facts)),
    section("Why this routine", whyPart(facts)),
    section("The evidence", evidencePart(facts)),
    section("Where it fails", failPart(facts)),
    section("What the model leaves out", limitsPart()),
    section("Run it again", replayPart(facts)),
    section(
      "Appendix: the steps",
      `<ol class="steps">${facts.steps.map((step) => `<li>${escaped(step)}</li>`).join("")}</ol>`,
    ),
    "</main></body></html>",
    "",
  ].join("\n");
}

function section(title: string, body: string): string {
  return `<section><h2>${escaped(title)}</h2>${body}</section>`;
}

function taskPart({ project, routine, durationS }: SheetFacts): string {
  const { zone, rules, robot } = project;
  const balls = ballsOf(project).length;
  const picture = svgOf(zonePicture(project, routine.moves, "The zone and the routine's way"), "way");
  return `<p>A zone of ${zone.widthMm} × ${zone.heightMm} mm, ${balls} ${balls === 1 ? "ball" : "balls"} to bring onto the wedge (hatched) within ${rules.timeLimitS} s. ${escaped(robot.name)} takes ${durationS.toFixed(0)} s for ${routine.moves.length} moves; the numbers on its way are those of the steps in the appendix.</p><figure>${picture}</figure>`;
}

function whyPart({ alternatives, successRate, durationS, routine }: SheetFacts): string {
  const row = (label: string, rate: Rate, seconds: number): string =>
    `<tr><td>${escaped(label)}</td><td class="number">${rateWords(rate)}</td><td>${rangeWords(rate)}</td><td class="number">${seconds.toFixed(0)} s</td></tr>`;
  return `<p>These were tried on the same placements of the balls, with the same luck. Where the ranges overlap widely the order may be chance.</p><table><thead><tr><th>routine</th><th>every ball home in</th><th></th><th>takes</th></tr></thead><tbody>${row(`This one: ${routine.label}`, successRate, durationS)}${alternatives.map((each) => row(each.label, each.successRate, each.durationS)).join("")}</tbody></table>`;
}

function evidencePart({ failings, meanDelivered, project, routine }: SheetFacts): string {
  const balls = ballsOf(project).length;
  return `<p>On average ${meanDelivered.toFixed(2)} of ${balls} balls came home. ${escaped(stopWords(failings.stop, routine.moves.length))}</p><figure>${svgOf(timeChart(failings.time, failings.stop), "time")}<figcaption>Share of ${failings.trials} runs with so many balls home by each second; the veil is what these runs leave open.</figcaption></figure>`;
}

function failPart({ failings, weakness, project, routine }: SheetFacts): string {
  const { losses, trials } = failings;
  const named = losses
    .slice(0, LOSS_ROWS)
    .map((loss) => `<li>${loss.balls} balls ${escaped(lossCountWords(loss, routine.moves))}</li>`)
    .join("");
  const [worst] = weakness.beatenDrifting;
  const hard =
    worst === undefined
      ? ""
      : `<p>The hardest placement found (x,y of each ball in mm, ${escaped(placementText(worst.placement))}): every ball home in ${rateWords(worst.successRate)} (${rangeWords(worst.successRate)}).</p><figure class="half">${svgOf(zonePicture(project, [], "The hardest placement", worst.placement), "hard")}</figure>`;
  return `<figure>${svgOf(lossChart(losses, trials), "losses")}</figure><ul>${named}</ul>${hard}`;
}

function limitsPart(): string {
  const rows = LIMITS.map(
    ({ leftOut, matters }) => `<li>${escaped(leftOut)} Trust less: ${escaped(matters)}.</li>`,
  );
  return `<ul class="small">${rows.join("")}</ul><p>${escaped(LIMITS_ADVICE)}</p>`;
}

function replayPart({ routine, seed, projectArgument, failings }: SheetFacts): string {
  const project = projectArgument === "" ? "" : ` ${projectArgument}`;
  return `<p>Run number N of the ${failings.trials} above, exactly as it was counted: <code>wedgeward trial${escaped(project)} --routine ${escaped(routine.id)} --seed ${seed} --index N</code>, N from 0.</p><p class="small">Moving tracks and arms can pinch: fingers, hair and sleeves away. Batteries are charged under an adult’s eye. The event’s own rules and the venue’s safety rules come first.</p>`;
}
