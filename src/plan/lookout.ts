import { type DistanceSensor, sensorOf } from "../model/sensor.ts";
import type { PointMm, RectMm } from "../model/zone.ts";
import { roomyMm } from "./place.ts";
import type { Scene } from "./scene.ts";

/** Grid of places to look from, and of balls to be seen, per side. */
const PLACES = 9;
const BALLS = 14;

/**
 * The places from which the scanning sensor sees most of the zone, the best first, each adding what the ones before do
 * not see; frame of frame.ts. Only where the robot can turn on the spot; a keep-out hides what is behind it. Ties go to
 * the place nearer to the target corner.
 */
export function lookouts(scene: Scene, count: number): readonly PointMm[] {
  const sensor = sensorOf(scene.project.robot.sensors, "distance");
  if (sensor === undefined) return [];
  const places = grid(scene, PLACES, roomyMm(scene)).filter((place) => hasRoom(scene, place));
  let open = grid(scene, BALLS, scene.ballDiameterMm);
  const chosen: PointMm[] = [];
  while (chosen.length < count) {
    let best: PointMm | null = null;
    let most = 0;
    for (const place of places) {
      const seen = open.filter((ball) => isSeen(scene, sensor, place, ball)).length;
      if (seen > most) [best, most] = [place, seen];
    }
    if (best === null) break;
    const from = best;
    chosen.push(from);
    open = open.filter((ball) => !isSeen(scene, sensor, from, ball));
  }
  return chosen;
}

/** From corner to corner, nearest to the target corner first. */
function grid({ widthMm, heightMm }: Scene, perSide: number, insetMm: number): readonly PointMm[] {
  const at = (i: number, length: number) => insetMm + (i * (length - 2 * insetMm)) / (perSide - 1);
  const points = Array.from({ length: perSide * perSide }, (_, k) => ({
    xMm: at(Math.floor(k / perSide), widthMm),
    yMm: at(k % perSide, heightMm),
  }));
  return points.sort((a, b) => a.xMm + a.yMm - b.xMm - b.yMm);
}

function hasRoom(scene: Scene, { xMm, yMm }: PointMm): boolean {
  const room = roomyMm(scene);
  if (Math.min(xMm, yMm, scene.widthMm - xMm, scene.heightMm - yMm) < room) return false;
  const { nx, ny, legXMm } = scene.target;
  if ((xMm - legXMm) * nx + yMm * ny < room) return false;
  return scene.project.zone.keepOuts.every((rect) => gapTo(rect, xMm, yMm) >= room);
}

function isSeen(scene: Scene, sensor: DistanceSensor, from: PointMm, ball: PointMm): boolean {
  const [dx, dy] = [ball.xMm - from.xMm, ball.yMm - from.yMm];
  const distance = Math.sqrt(dx * dx + dy * dy) - sensor.alongMm - scene.ballDiameterMm / 2;
  if (distance < sensor.nearestMm || distance > sensor.rangeMm) return false;
  return scene.project.zone.keepOuts.every((rect) => !isHidden(rect, from, dx, dy));
}

/** Whether the line of sight passes through a keep-out: looked at in steps far smaller than a pillar. */
function isHidden(rect: RectMm, from: PointMm, dx: number, dy: number): boolean {
  const steps = Math.ceil(Math.sqrt(dx * dx + dy * dy) / 10);
  for (let k = 1; k < steps; k++) {
    if (gapTo(rect, from.xMm + (dx * k) / steps, from.yMm + (dy * k) / steps) === 0) return true;
  }
  return false;
}

function gapTo(rect: RectMm, x: number, y: number): number {
  const dx = Math.max(rect.xMm - x, 0, x - rect.xMm - rect.widthMm);
  const dy = Math.max(rect.yMm - y, 0, y - rect.yMm - rect.heightMm);
  return Math.sqrt(dx * dx + dy * dy);
}
