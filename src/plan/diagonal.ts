import { patternTexts } from "../texts/english/pattern.ts";
import { closingRuns } from "./closing.ts";
import { coded, combinations, type Family, listed, percent, type Variant } from "./family.ts";
import { beforeWedge, pusherWidthMm, roomyMm } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

interface Choice {
  readonly spacing: number;
  readonly closing: number;
  readonly back: boolean;
}

/** Parallel lanes square to the wedge's long side, toward the corner: the middle ones end on the wedge, the others at the closing walls. */
export const DIAGONAL: Family = {
  id: "diag",
  get pattern() {
    return patternTexts.names.diagonal;
  },
  variants: combinations({ spacing: [0.7, 0.9], closing: [0, 2], back: [true] }).map(variant),
};

function variant(choice: Choice): Variant {
  const { spacing, closing, back } = choice;
  return {
    code: coded(`s${percent(spacing)}`, `c${closing}`, back ? "b" : ""),
    get label() {
      return listed(
        patternTexts.apart(percent(spacing)),
        closing > 0 ? patternTexts.closings(closing) : "",
        back ? patternTexts.goesBack : "",
      );
    },
    params: { spacingFrac: spacing, closingRuns: closing, back },
    longFirst: true,
    extraBerthMm: 0,
    dials: { spacingFrac: spacing },
    runs: (scene, { spacingFrac = spacing }) => [
      ...diagonals(scene, spacingFrac, back),
      ...closingRuns(scene, closing, false),
    ],
  };
}

/** From the outside in, by turns on both sides, so that the last lane is the one onto the wedge. */
export function diagonals(scene: Scene, spacing: number, back: boolean): readonly PushRun[] {
  const step = spacing * pusherWidthMm(scene);
  const reach = scene.widthMm + scene.heightMm;
  const most = Math.ceil(reach / step - 1e-9);
  const asides = Array.from({ length: most }, (_, i) => (most - 1 - i) * step).flatMap((aside) =>
    aside === 0 ? [0] : [aside, -aside],
  );
  return asides.flatMap((aside) => diagonalLane(scene, aside, back));
}

/** None where the lane would be too short to be one. */
function diagonalLane(scene: Scene, asideMm: number, back: boolean): readonly PushRun[] {
  const { target, widthMm, heightMm } = scene;
  const room = roomyMm(scene);
  const foot = beforeWedge(scene, 0, asideMm);
  const start = Math.min((widthMm - room - foot.xMm) / target.nx, (heightMm - room - foot.yMm) / target.ny);
  const end = Math.max(0, (room - foot.xMm) / target.nx, (room - foot.yMm) / target.ny);
  if (start < end + room / 2) return [];
  return [
    {
      ways: [[beforeWedge(scene, start, asideMm), foot]],
      backUp: true,
      squareUps: [],
      end: "wall",
      retreat: back ? "back" : "off",
    },
  ];
}
