import { type Body, Box, Circle, Polygon, Settings, type Shape, Vec2, World } from "planck";
import type { BallKind } from "../../src/model/ball.ts";
import type { Project } from "../../src/model/project.ts";
import type { PointMm, Surface } from "../../src/model/zone.ts";
import { boxOf, doorwayParts, type Box as SolidBox, wedgeEdge } from "../../src/motion/obstacles.ts";
import { convexPieces } from "./convexPieces.ts";
import { pullOfFloor } from "./planckFloor.ts";
import { bounce, type PlanckBall, partOf } from "./planckParts.ts";
import { MM_PER_UNIT } from "./planckUnits.ts";

/**
 * A zone in planck. Polygons lose their skin (it would make every ball thicker), restitution is set contact by contact
 * (planck's own rule takes the larger one), nothing has friction, and the floor pulls as design.md §4 says.
 */

const WALLS = ["left", "right", "bottom", "top"] as const;
const WALL_DEPTH_MM = 300;
/** Blocks are cut off this far outside of the zone, mm. */
const OUTSIDE_MM = 2000;

export class PlanckScene {
  readonly world: World;
  readonly robot: Body;
  balls: PlanckBall[] = [];
  private readonly project: Project;

  /** @param footprint robot frame, counter-clockwise, non-convex allowed */
  constructor(project: Project, footprint: readonly PointMm[]) {
    this.project = project;
    this.world = new World({ gravity: new Vec2(0, 0), allowSleep: true, continuousPhysics: false });
    this.world.on("begin-contact", bounce);
    for (const box of solidsOf(project)) this.addBox(box, project.zone.walls);
    this.robot = this.world.createKinematicBody({ userData: partOf(project.robot.surface) });
    for (const piece of convexPieces(footprint, Settings.maxPolygonVertices)) {
      const shape = new Polygon(piece.map(({ xMm, yMm }) => new Vec2(xMm / MM_PER_UNIT, yMm / MM_PER_UNIT)));
      this.robot.createFixture({ shape: skinless(shape), friction: 0 });
    }
  }

  private addBox(box: SolidBox, surface: Surface): void {
    const { widthMm, heightMm } = this.project.zone;
    const minX = Math.max(box.minX, -OUTSIDE_MM);
    const minY = Math.max(box.minY, -OUTSIDE_MM);
    const maxX = Math.min(box.maxX, widthMm + OUTSIDE_MM);
    const maxY = Math.min(box.maxY, heightMm + OUTSIDE_MM);
    const centre = new Vec2((minX + maxX) / (2 * MM_PER_UNIT), (minY + maxY) / (2 * MM_PER_UNIT));
    const shape = new Box((maxX - minX) / (2 * MM_PER_UNIT), (maxY - minY) / (2 * MM_PER_UNIT));
    const body = this.world.createBody({ position: centre, userData: partOf(surface) });
    body.createFixture({ shape: skinless(shape), friction: 0 });
  }

  /** Replaces all balls by new ones that lie still. */
  lay(kinds: readonly BallKind[], places: readonly PointMm[]): void {
    for (const ball of this.balls) this.world.destroyBody(ball.body);
    this.balls = kinds.map((kind, i) => this.addBall(kind, places[i]!));
  }

  private addBall(kind: BallKind, at: PointMm): PlanckBall {
    const part = partOf(kind);
    const body = this.world.createDynamicBody({
      position: new Vec2(at.xMm / MM_PER_UNIT, at.yMm / MM_PER_UNIT),
      fixedRotation: true,
      userData: part,
    });
    body.createFixture({ shape: new Circle(kind.diameterMm / 2 / MM_PER_UNIT), friction: 0, density: 1 });
    body.setMassData({ mass: kind.massKg, center: new Vec2(0, 0), I: 0 });
    body.setAwake(false);
    part.ball = { kind, body, roll: new Vec2(0, 0), before: body.getPosition().clone(), out: false };
    return part.ball;
  }

  /** One step of h seconds: half the floor's pull, planck's step, the other half; then balls in the doorway leave. */
  step(h: number): void {
    for (const ball of this.balls) {
      ball.before.set(ball.body.getPosition());
      if (ball.body.isAwake()) pullOfFloor(ball, h / 2);
    }
    this.world.step(h);
    for (const ball of this.balls) {
      if (!ball.body.isAwake() || ball.out) continue;
      pullOfFloor(ball, h / 2);
      if (this.isThroughDoor(ball)) {
        ball.out = true;
        ball.body.setActive(false);
      }
    }
  }

  /** Puts a ball back to where it was before the last step, at rest. */
  takeBack(ball: PlanckBall): void {
    ball.body.setTransform(ball.before, 0);
    ball.body.setLinearVelocity(Vec2.zero());
    ball.roll.setZero();
  }

  placeOf(ball: PlanckBall): PointMm {
    const { x, y } = ball.body.getPosition();
    return { xMm: x * MM_PER_UNIT, yMm: y * MM_PER_UNIT };
  }

  /** The ball's centre is over the wedge, and the ball did not leave through the doorway. */
  isHome(ball: PlanckBall): boolean {
    const { xMm, yMm } = this.placeOf(ball);
    const edge = wedgeEdge(this.project.zone);
    return !ball.out && edge.nx * xMm + edge.ny * yMm < edge.offset;
  }

  private isThroughDoor(ball: PlanckBall): boolean {
    const { xMm, yMm } = this.placeOf(ball);
    const { doorway, widthMm, heightMm } = this.project.zone;
    const upright = doorway.wall === "left" || doorway.wall === "right";
    const past = { left: -xMm, right: xMm - widthMm, bottom: -yMm, top: yMm - heightMm }[doorway.wall];
    return past >= 0 && Math.abs((upright ? yMm : xMm) - doorway.centreMm) < doorway.widthMm / 2;
  }

  /** Deepest overlap of a ball at the start of the last step, mm; 0 when nothing overlaps it. */
  overlapOf(ball: PlanckBall): number {
    let deepest = 0;
    for (let at = ball.body.getContactList(); at; at = at.next) {
      if (!at.contact.isTouching()) continue;
      const depth = -(at.contact.getWorldManifold(null)?.separations[0] ?? 0) * MM_PER_UNIT;
      deepest = Math.max(deepest, depth);
    }
    return deepest;
  }
}

function solidsOf(project: Project): readonly SolidBox[] {
  const { widthMm: w, heightMm: h, doorway, keepOuts } = project.zone;
  const d = WALL_DEPTH_MM;
  const whole = {
    left: { minX: -d, maxX: 0, minY: -d, maxY: h + d },
    right: { minX: w, maxX: w + d, minY: -d, maxY: h + d },
    bottom: { minX: -d, maxX: w + d, minY: -d, maxY: 0 },
    top: { minX: -d, maxX: w + d, minY: h, maxY: h + d },
  };
  const walls = WALLS.filter((wall) => wall !== doorway.wall).map((wall) => whole[wall]);
  return [...walls, ...doorwayParts(project.zone), ...keepOuts.map(boxOf)];
}

function skinless<S extends Shape>(shape: S): S {
  shape.m_radius = 0;
  return shape;
}
