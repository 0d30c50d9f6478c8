import type { Project } from "../model/project.ts";
import type { Rate } from "../num/interval.ts";
import type { Objective } from "../search/objective.ts";
import { outOf100, rangeWords, rateWords } from "./rateWords.ts";

/** What a figure says: "64 of 100 runs", "7.2 of 9 points", "83 of 100 balls by 60 s". */
export function figureWords({ id, bySecondS }: Objective, figure: Rate, project: Project): string {
  switch (id) {
    case "every-ball":
      return rateWords(figure);
    case "points": {
      const most = pointsOf(project);
      return `${(figure.value * most).toFixed(1)} of ${most} points`;
    }
    case "home-by":
      return `${outOf100(figure.value)} of 100 balls by ${bySecondS} s`;
    default:
      return id satisfies never;
  }
}

/** "likely between 60 and 68", in what the figure counts; the ends are rounded outward. */
export function figureRangeWords({ id }: Objective, figure: Rate, project: Project): string {
  if (id !== "points") return rangeWords(figure);
  const most = pointsOf(project);
  const low = Math.floor(10 * figure.low * most) / 10;
  const high = Math.ceil(10 * figure.high * most) / 10;
  return `likely between ${low.toFixed(1)} and ${high.toFixed(1)}`;
}

/** What is counted, as a column's or an axis's title. */
export function figureTitle({ id, bySecondS }: Objective): string {
  switch (id) {
    case "every-ball":
      return "every ball home in";
    case "points":
      return "points";
    case "home-by":
      return `home by ${bySecondS} s`;
    default:
      return id satisfies never;
  }
}

/** Points of all balls together. */
export function pointsOf({ balls }: Project): number {
  return balls.reduce((sum, { count, points }) => sum + count * points, 0);
}
