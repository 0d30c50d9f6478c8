import { Container, Graphics, type Text } from "pixi.js";
import type { BallKind } from "../model/ball.ts";
import type { PointMm } from "../model/zone.ts";
import type { BallMark } from "./ballMark.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import { ballColour, type Palette } from "./palette.ts";
import type { Taken } from "./pathLayout.ts";
import type { PointPx, Viewport } from "./viewport.ts";

/** A ball smaller than this carries its number beside it, pixels. */
const NUMBER_INSIDE_PX = 15;
const BADGE_PX = 7;
const NUMBER_PX = 11;
/** The disc of a move's number, and a gap. */
const CLEAR_PX = 10;

interface BallNode {
  readonly layer: Container;
  readonly tick: Graphics;
  readonly cross: Graphics;
}

/** Numbered balls to scale; a tick in a disc on those delivered, a cross in a square on those lost. */
export class BallScene {
  readonly layer = new Container();
  #nodes: readonly BallNode[] = [];

  draw(balls: readonly BallKind[], viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    this.#nodes = balls.map((kind, index) => {
      const node = ballNode(kind, index, viewport, palette);
      node.layer.visible = false;
      this.layer.addChild(node.layer);
      return node;
    });
  }

  place(ball: number, at: PointMm, mark: BallMark, viewport: Viewport): void {
    const node = this.#nodes[ball];
    if (!node) return;
    node.layer.visible = true;
    node.layer.position.set(viewport.x(at.xMm), viewport.y(at.yMm));
    node.tick.visible = mark === "delivered";
    node.cross.visible = mark === "lost";
  }

  hide(): void {
    for (const node of this.#nodes) node.layer.visible = false;
  }
}

/** Where balls that lie so leave no room for other numbers: under a ball, and under its own number beside it. */
export function takenBy(
  balls: readonly BallKind[],
  placement: readonly PointMm[],
  viewport: Viewport,
): readonly Taken[] {
  return placement.flatMap((place, index) => {
    const kind = balls[index];
    if (!kind) return [];
    const at = viewport.point(place);
    const radius = radiusOf(kind, viewport);
    const ball = { at, radiusPx: radius + CLEAR_PX };
    if (isInside(radius)) return [ball];
    const { x, y } = beside(radius);
    return [ball, { at: { x: at.x + x, y: at.y + y }, radiusPx: NUMBER_PX / 2 + CLEAR_PX }];
  });
}

function ballNode(kind: BallKind, index: number, viewport: Viewport, palette: Palette): BallNode {
  const layer = new Container();
  const radius = radiusOf(kind, viewport);
  const disc = new Graphics();
  disc.circle(0, 0, radius).fill(ballColour(palette, index));
  disc.circle(0, 0, radius).stroke({ width: 1.5, color: palette.ink, alignment: 1 });
  const tick = badge(radius);
  tick.roundRect(-BADGE_PX, -BADGE_PX, 2 * BADGE_PX, 2 * BADGE_PX, BADGE_PX).fill(palette.delivered);
  tick
    .roundRect(-BADGE_PX, -BADGE_PX, 2 * BADGE_PX, 2 * BADGE_PX, BADGE_PX)
    .stroke({ width: 1.5, color: palette.paper });
  tick.moveTo(-3.5, 0).lineTo(-1, 3).lineTo(4, -3).stroke({ width: 2, color: palette.paper });
  const cross = badge(radius);
  cross.rect(-BADGE_PX, -BADGE_PX, 2 * BADGE_PX, 2 * BADGE_PX).fill(palette.lost);
  cross.rect(-BADGE_PX, -BADGE_PX, 2 * BADGE_PX, 2 * BADGE_PX).stroke({ width: 1.5, color: palette.paper });
  cross.moveTo(-3.2, -3.2).lineTo(3.2, 3.2).moveTo(3.2, -3.2).lineTo(-3.2, 3.2);
  cross.stroke({ width: 2, color: palette.paper });
  layer.addChild(disc, numberText(index, radius, palette), tick, cross);
  return { layer, tick, cross };
}

function badge(radius: number): Graphics {
  const node = new Graphics();
  const out = Math.max(radius, BADGE_PX) * 0.85;
  node.position.set(out + 1, -out - 1);
  node.visible = false;
  return node;
}

function radiusOf(kind: BallKind, viewport: Viewport): number {
  return Math.max(3, viewport.px(kind.diameterMm / 2));
}

function isInside(radius: number): boolean {
  return 2 * radius >= NUMBER_INSIDE_PX;
}

/** Middle of a number that stands beside its ball. */
function beside(radius: number): PointPx {
  return { x: -radius - 6, y: -radius - 4 };
}

function numberText(index: number, radius: number, palette: Palette): Text {
  const style = isInside(radius)
    ? { colour: palette.ballInk, sizePx: Math.min(16, Math.max(10, radius * 1.05)), bold: true }
    : { colour: palette.ink, sizePx: NUMBER_PX, bold: true, halo: palette.floor };
  const text = label(String(index + 1), style);
  if (!isInside(radius)) text.position.copyFrom(beside(radius));
  return text;
}
