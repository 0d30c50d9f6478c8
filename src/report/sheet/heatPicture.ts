import type { Project } from "../../model/project.ts";
import { type HeatMap, lostSideMm } from "../../score/heatMap.ts";
import { heatTexts as t } from "../../texts/english/heat.ts";
import type { Drawing, Shape } from "../charts/drawing.ts";
import { floorShapes, zonePaper } from "./zonePicture.ts";

/** Squares do not run together, px. */
const GAP_PX = 1.5;
/** What a cell without losses shows, px. */
const LEAST_PX = 2;

/**
 * Where lost balls had started: the larger the square, the more of the balls around there were lost, as on the page's map. One ink:
 * nothing is told by colour. Cells with too few balls stay empty.
 */
export function heatPicture({ zone }: Project, map: HeatMap): Drawing {
  const { at, scale, widthPx, heightPx } = zonePaper(zone);
  const squares = map.cells.flatMap(({ xMm, yMm, rate }): Shape[] => {
    if (rate === null || xMm > zone.widthMm || yMm > zone.heightMm) return [];
    const side = Math.max(LEAST_PX, scale * lostSideMm(map.cellMm, rate) - GAP_PX);
    const [x, y] = at({ xMm, yMm });
    const points = [
      [x - side / 2, y - side / 2],
      [x + side / 2, y - side / 2],
      [x + side / 2, y + side / 2],
      [x - side / 2, y + side / 2],
    ] as const;
    return [{ kind: "area", points, fill: "full" }];
  });
  return {
    ...{ widthPx, heightPx, title: t.title, description: t.description },
    shapes: [...floorShapes(zone, at), ...squares],
  };
}
