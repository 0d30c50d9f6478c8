import type { Project } from "../../model/project.ts";
import type { Corner, PointMm, RectMm, Zone } from "../../model/zone.ts";
import { isRight, isUpper } from "../../motion/obstacles.ts";
import { drawingTexts as t } from "../../texts/english/drawing.ts";
import { moveTexts } from "../../texts/english/move.ts";
import { lengthText } from "../../texts/lengths.ts";
import { doorwayEnds, wallPoint } from "../../view/wallBand.ts";
import { wedgePlace } from "../../view/wedgePlace.ts";
import { type Form, withValue } from "../project/form.ts";
import { ballWords } from "./ballHandles.ts";
import type { Handle } from "./handle.ts";

/** All that can be dragged of a zone: walls, doorway, wedge, keep-outs, forbidden regions, fixed balls. */
export function zoneHandles({ zone, rules }: Project): readonly Handle[] {
  const { layout } = rules;
  return [
    ...wallHandles(zone),
    ...doorwayHandles(zone),
    ...wedgeHandles(zone),
    ...zone.keepOuts.flatMap((rect, i) => rectHandles(rect, `zone.keepOuts[${i}]`, t.keepOut(i + 1))),
    ...(layout.kind === "random" ? layout.forbidden : []).flatMap((rect, i) =>
      rectHandles(rect, `rules.layout.forbidden[${i}]`, t.region(i + 1)),
    ),
    ...(layout.kind === "fixed" ? layout.positions : []).map((at, i) => ballHandle(at, i)),
  ];
}

function set(form: Form, values: Readonly<Record<string, unknown>>): Form {
  return Object.entries(values).reduce((next, [path, value]) => withValue(next, path, value), form);
}

function wallHandles(zone: Zone): readonly Handle[] {
  const { widthMm, heightMm } = zone;
  return [
    {
      id: "right-wall",
      words: t.rightWall(lengthText(widthMm)),
      at: { xMm: widthMm, yMm: heightMm / 2 },
      axis: "x",
      look: "grip",
      move: (form, to) => set(form, { "zone.widthMm": to.xMm }),
    },
    {
      id: "upper-wall",
      words: t.upperWall(lengthText(heightMm)),
      at: { xMm: widthMm / 2, yMm: heightMm },
      axis: "y",
      look: "grip",
      move: (form, to) => set(form, { "zone.heightMm": to.yMm }),
    },
  ];
}

function doorwayHandles(zone: Zone): readonly Handle[] {
  const { wall, centreMm, widthMm } = zone.doorway;
  const axis = wall === "left" || wall === "right" ? "y" : "x";
  const along = (to: PointMm) => (axis === "y" ? to.yMm : to.xMm);
  const [start, end] = doorwayEnds(zone);
  const from = centreMm - widthMm / 2;
  const to = centreMm + widthMm / 2;
  const ends = (form: Form, a: number, b: number) =>
    set(form, { "zone.doorway.centreMm": (a + b) / 2, "zone.doorway.widthMm": b - a });
  return [
    {
      id: "doorway",
      words: t.doorway[wall](lengthText(centreMm)),
      at: wallPoint(zone, wall, centreMm),
      axis,
      look: "body",
      move: (form, at) => set(form, { "zone.doorway.centreMm": along(at) }),
    },
    {
      id: "doorway-start",
      words: t.firstPost(lengthText(widthMm)),
      at: start,
      axis,
      look: "grip",
      move: (form, at) => ends(form, along(at), to),
    },
    {
      id: "doorway-end",
      words: t.secondPost(lengthText(widthMm)),
      at: end,
      axis,
      look: "grip",
      move: (form, at) => ends(form, from, along(at)),
    },
  ];
}

function wedgeHandles(zone: Zone): readonly Handle[] {
  const { corner, legXMm, legYMm } = zone.wedge;
  const place = wedgePlace(zone);
  return [
    {
      id: "wedge-x",
      words: t.wedgeAlong[isUpper(corner) ? "top" : "bottom"](lengthText(legXMm)),
      at: place.onX,
      axis: "x",
      look: "grip",
      move: (form, to) =>
        set(form, { "zone.wedge.legXMm": isRight(corner) ? zone.widthMm - to.xMm : to.xMm }),
    },
    {
      id: "wedge-y",
      words: t.wedgeAlong[isRight(corner) ? "right" : "left"](lengthText(legYMm)),
      at: place.onY,
      axis: "y",
      look: "grip",
      move: (form, to) =>
        set(form, { "zone.wedge.legYMm": isUpper(corner) ? zone.heightMm - to.yMm : to.yMm }),
    },
    {
      id: "wedge",
      words: t.wedge(moveTexts.corners[corner]),
      // Toward the long side: what the wedge is stands in its corner.
      at: middleOf([place.corner, place.onX, place.onY, place.onX, place.onY]),
      axis: "both",
      look: "body",
      move: (form, to) => set(form, { "zone.wedge.corner": nearestCorner(zone, to) }),
    },
  ];
}

function middleOf(points: readonly PointMm[]): PointMm {
  const sum = (key: keyof PointMm) => points.reduce((total, point) => total + point[key], 0);
  return { xMm: sum("xMm") / points.length, yMm: sum("yMm") / points.length };
}

function nearestCorner(zone: Zone, at: PointMm): Corner {
  const upper = at.yMm > zone.heightMm / 2;
  const right = at.xMm > zone.widthMm / 2;
  return `${upper ? "upper" : "lower"}-${right ? "right" : "left"}`;
}

function rectHandles(rect: RectMm, path: string, name: string): readonly Handle[] {
  const { xMm, yMm, widthMm, heightMm } = rect;
  return [
    {
      id: path,
      words: t.at(name, lengthText(xMm), lengthText(yMm)),
      at: { xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2 },
      axis: "both",
      look: "body",
      move: (form, to) =>
        set(form, { [`${path}.xMm`]: to.xMm - widthMm / 2, [`${path}.yMm`]: to.yMm - heightMm / 2 }),
    },
    {
      id: `${path}-corner`,
      words: t.cornerOf(name, lengthText(widthMm), lengthText(heightMm)),
      at: { xMm: xMm + widthMm, yMm: yMm + heightMm },
      axis: "both",
      look: "grip",
      move: (form, to) =>
        set(form, { [`${path}.widthMm`]: to.xMm - xMm, [`${path}.heightMm`]: to.yMm - yMm }),
    },
  ];
}

function ballHandle(at: PointMm, ball: number): Handle {
  return {
    id: `ball-${ball}`,
    words: ballWords(ball, at),
    at,
    axis: "both",
    look: "body",
    move: (form, to) => set(form, { [`rules.layout.positionsMm[${ball}]`]: [to.xMm, to.yMm] }),
  };
}
