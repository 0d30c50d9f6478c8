import type { Project } from "../model/project.ts";
import type { Rate } from "../num/interval.ts";
import type { Objective } from "../search/objective.ts";
import { rateTexts } from "../texts/english/rate.ts";
import { fixed } from "../texts/numbers.ts";
import { outOf100, rangeEnds, rateWords } from "./rateWords.ts";

/** What a figure says: "64 of 100 runs", "7.2 of 9 points", "83 of 100 balls by 60 s". */
export function figureWords({ id, bySecondS }: Objective, figure: Rate, project: Project): string {
  switch (id) {
    case "every-ball":
      return rateWords(figure);
    case "points": {
      const most = pointsOf(project);
      return rateTexts.points(fixed(figure.value * most, 1), most);
    }
    case "home-by":
      return rateTexts.ballsBy(outOf100(figure.value), bySecondS);
    default:
      return id satisfies never;
  }
}

/** "likely between 60 and 68", in what the figure counts. */
export function figureRangeWords(objective: Objective, figure: Rate, project: Project): string {
  return rateTexts.likely(...figureEnds(objective, figure, project));
}

/** Both ends of its range; rounded outward, so that it never claims too much. */
export function figureEnds(
  { id }: Objective,
  figure: Rate,
  project: Project,
): readonly [low: number | string, high: number | string] {
  if (id !== "points") return rangeEnds(figure);
  const most = pointsOf(project);
  const low = Math.floor(10 * figure.low * most) / 10;
  const high = Math.ceil(10 * figure.high * most) / 10;
  return [fixed(low, 1), fixed(high, 1)];
}

/** What is counted, as a column's or an axis's title. */
export function figureTitle({ id, bySecondS }: Objective): string {
  switch (id) {
    case "every-ball":
      return rateTexts.titles.everyBall;
    case "points":
      return rateTexts.titles.points;
    case "home-by":
      return rateTexts.titles.homeBy(bySecondS);
    default:
      return id satisfies never;
  }
}

/** Points of all balls together. */
export function pointsOf({ balls }: Project): number {
  return balls.reduce((sum, { count, points }) => sum + count * points, 0);
}
