import type { Project } from "../../model/project.ts";
import { type HeatMap, lostMark } from "../../score/heatMap.ts";
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
  const halfPx = (mm: number): number => Math.max(LEAST_PX, scale * mm - GAP_PX) / 2;
  const squares = map.cells.flatMap((cell): Shape[] => {
    if (cell.rate === null) return [];
    const mark = lostMark(map, cell, cell.rate);
    const [x, y] = at(mark);
    const [across, up] = [halfPx(mark.acrossMm), halfPx(mark.upMm)];
    const points = [
      [x - across, y - up],
      [x + across, y - up],
      [x + across, y + up],
      [x - across, y + up],
    ] as const;
    return [{ kind: "area", points, fill: "full" }];
  });
  return {
    ...{ widthPx, heightPx, title: t.title, description: t.description },
    shapes: [...floorShapes(zone, at), ...squares],
  };
}
