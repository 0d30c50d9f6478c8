import type { LossCount } from "../../score/lossCounts.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { fixed } from "../../texts/numbers.ts";
import { LOSS_REASONS } from "../../trial/outcome.ts";
import { lossTitle } from "../lossWords.ts";
import { type Drawing, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import { linearScale } from "./scale.ts";

/** Narrow: it stands in half a page. */
const WIDTH_PX = 460;
/** The longest reason in any language, in serifs as on a sheet too. */
const LABEL_PX = 190;
const ROW_PX = 26;
const BAR_PX = 16;
const TOP_PX = 12;
const NUMBER_PX = 118;

/** Lost balls by reason, most first, each bar with its number. */
export function lossChart(losses: readonly LossCount[], trials: number): Drawing {
  const rows = LOSS_REASONS.map((reason) => ({
    title: lossTitle(reason),
    balls: losses.reduce((sum, loss) => sum + (loss.reason === reason ? loss.balls : 0), 0),
  }))
    .filter(({ balls }) => balls > 0)
    .sort((a, b) => b.balls - a.balls);
  const most = Math.max(1, ...rows.map(({ balls }) => balls));
  const x = linearScale([0, most], [LABEL_PX, WIDTH_PX - NUMBER_PX]);
  const shapes = rows.flatMap(({ title, balls }, i): Shape[] => {
    const yPx = TOP_PX + i * ROW_PX;
    const text = yPx + BAR_PX / 2 + TEXT_PX / 3;
    return [
      textAt(LABEL_PX - 10, text, title, "end"),
      { kind: "bar", xPx: LABEL_PX, yPx, widthPx: x.at(balls) - LABEL_PX, heightPx: BAR_PX, fill: "hatched" },
      textAt(x.at(balls) + 8, text, t.lossesARun(balls, perRun(balls, trials)), "start"),
    ];
  });
  const words = rows.map(({ title, balls }) => `${title} ${balls}`).join(", ");
  return {
    widthPx: WIDTH_PX,
    heightPx: TOP_PX + Math.max(1, rows.length) * ROW_PX,
    title: t.losses,
    description: rows.length === 0 ? t.noLoss(trials) : t.lossesOf(trials, words),
    shapes: rows.length === 0 ? [nothing(trials)] : shapes,
  };
}

function perRun(balls: number, trials: number): string {
  return trials === 0 ? "0" : fixed(balls / trials, 2);
}

function nothing(trials: number): Shape {
  return textAt(WIDTH_PX / 2, TOP_PX + TEXT_PX, t.noLoss(trials), "middle");
}
