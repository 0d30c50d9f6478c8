import { Container } from "pixi.js";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm, Zone } from "../model/zone.ts";
import type { Course } from "../motion/course.ts";
import { entryPose } from "../motion/entry.ts";
import type { TrialOutcome } from "../trial/outcome.ts";
import { armsAt, ballAt, moveAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";
import { ballMark } from "./ballMark.ts";
import { BallScene, takenBy } from "./ballScene.ts";
import { DoorwayScene } from "./doorwayScene.ts";
import { GhostScene } from "./ghostScene.ts";
import { KeepOutScene } from "./keepOutScene.ts";
import { MapScene } from "./mapScene.ts";
import type { Palette } from "./palette.ts";
import { PathScene } from "./pathScene.ts";
import { RegionScene } from "./regionScene.ts";
import { RobotScene } from "./robotScene.ts";
import type { RunTrace } from "./runTrace.ts";
import { StartScene } from "./startScene.ts";
import { Surface } from "./surface.ts";
import { SweptScene } from "./sweptScene.ts";
import { TrailScene } from "./trailScene.ts";
import { TroubleScene } from "./troubleScene.ts";
import { type Viewport, zoomedViewports, zoomOf } from "./viewport.ts";
import { WedgeScene } from "./wedgeScene.ts";
import type { ZoneMap } from "./zoneMap.ts";
import { marginOf, ZoneScene } from "./zoneScene.ts";

/** How much nearer the robot is seen when the drawing follows it. */
const FOLLOW_SCALE = 2.2;

/** A recorded run ready to be drawn at any second. */
export interface ViewRun {
  readonly outcome: TrialOutcome;
  readonly recording: Recording;
  readonly trace: RunTrace;
}

/**
 * The drawing of a zone and of a run in it. Set what is to be seen, in any order; still parts are drawn anew only when
 * the project, the size or the theme changes, moving parts with every `showTime`.
 */
export class ZoneView {
  readonly #surface: Surface;
  readonly #root: Container;
  readonly #zone = new ZoneScene();
  readonly #keepOuts = new KeepOutScene();
  readonly #wedge = new WedgeScene();
  readonly #doorway = new DoorwayScene();
  readonly #path = new PathScene();
  readonly #region = new RegionScene();
  readonly #map = new MapScene();
  readonly #ghosts = new GhostScene();
  readonly #start = new StartScene();
  readonly #swept = new SweptScene();
  readonly #trails = new TrailScene();
  readonly #troubles = new TroubleScene();
  readonly #robot = new RobotScene();
  readonly #balls = new BallScene();
  #palette: Palette;
  #project: Project | null = null;
  #course: Course | null = null;
  #run: ViewRun | null = null;
  #timeS = 0;
  #litMove = -1;
  #showsSwept = false;
  #follows = false;
  #zoneMap: ZoneMap | null = null;
  #size = { widthPx: 0, heightPx: 0 };
  #viewport: Viewport | null = null;
  #heldZone: Zone | null = null;
  #samples: readonly (readonly PointMm[])[] | null = null;
  /** Told where millimetres are on the screen, now and whenever that changes. */
  onViewport: (viewport: Viewport) => void = () => {};

  private constructor(surface: Surface, root: Container, palette: Palette) {
    this.#surface = surface;
    this.#root = root;
    this.#palette = palette;
    const layers = [
      this.#zone,
      this.#swept,
      this.#wedge,
      this.#region,
      this.#map,
      this.#keepOuts,
      this.#doorway,
      this.#path,
      this.#start,
      this.#trails,
      this.#ghosts,
      this.#robot,
      { layer: this.#map.over },
      this.#balls,
      this.#troubles,
    ];
    for (const { layer } of layers) root.addChild(layer);
  }

  /** Opens a canvas; the caller puts `canvas` into the page. */
  static async open(palette: Palette): Promise<ZoneView> {
    const root = new Container();
    return new ZoneView(await Surface.open(root), root, palette);
  }

  get canvas(): HTMLCanvasElement {
    return this.#surface.canvas;
  }

  resize(widthPx: number, heightPx: number): void {
    this.#size = { widthPx, heightPx };
    this.#surface.resize(widthPx, heightPx, zoomOf(widthPx, heightPx));
    this.#redraw();
  }

  /** See `Surface.paint`. */
  paint(...how: Parameters<Surface["paint"]>): void {
    this.#surface.paint(...how);
  }

  setPalette(palette: Palette): void {
    this.#palette = palette;
    this.#redraw();
  }

  setProject(project: Project): void {
    if (project === this.#project) return;
    this.#project = project;
    this.#course = null;
    this.#run = null;
    this.#redraw();
  }

  setCourse(course: Course | null): void {
    if (course === this.#course) return;
    this.#course = course;
    if (!this.#viewport) return;
    this.#drawPath(this.#viewport);
    this.#drawMoving();
  }

  setRun(run: ViewRun | null): void {
    if (run === this.#run) return;
    this.#run = run;
    this.#numberPath();
    this.#drawStart();
    this.#drawMoving();
  }

  /** Lays a map over the floor; null for none. */
  setMap(map: ZoneMap | null): void {
    if (map === this.#zoneMap) return;
    this.#zoneMap = map;
    if (this.#viewport) this.#map.draw(map, this.#viewport, this.#palette);
    this.#surface.request();
  }

  /** Shows more runs at once, faintly; they move with `showTime`. */
  setGhosts(runs: readonly Recording[]): void {
    this.#ghosts.setRuns(runs);
    if (this.#viewport && this.#project) this.#ghosts.draw(this.#project, this.#viewport, this.#palette);
    this.#drawMoving();
  }

  /** Lights up a move's stretch instead of the one under way; −1 for none. */
  setLit(move: number): void {
    this.#litMove = move;
    this.#drawMoving();
  }

  /** Shades the floor that the pusher has passed over so far. */
  setSwept(on: boolean): void {
    if (on === this.#showsSwept) return;
    this.#showsSwept = on;
    this.#drawStart();
    this.#drawMoving();
  }

  /** Keeps the robot in the middle, seen from nearer, except at the start of a run, where balls can be dragged. */
  setFollow(on: boolean): void {
    this.#follows = on;
    this.#drawMoving();
  }

  /** Shows where balls may lie, with these sample placements; null for neither. */
  setSamples(samples: readonly (readonly PointMm[])[] | null): void {
    this.#samples = samples;
    if (this.#viewport) this.#drawRegion(this.#viewport);
    this.#surface.request();
  }

  /** While something is dragged the scale stays what it is, or the drawing would run away under the pointer. */
  holdScale(hold: boolean): void {
    this.#heldZone = hold ? (this.#project?.zone ?? null) : null;
    if (!hold) this.#redraw();
  }

  /** @param timeS second of the run, held inside its duration */
  showTime(timeS: number): void {
    this.#timeS = timeS;
    this.#drawMoving();
  }

  destroy(): void {
    this.#surface.destroy();
  }

  #redraw(): void {
    const { widthPx, heightPx } = this.#size;
    if (!this.#project || widthPx < 1 || heightPx < 1) return;
    const fitted = this.#heldZone ?? this.#project.zone;
    const { scene: viewport, page } = zoomedViewports(fitted, this.#size, marginOf(fitted));
    this.#viewport = viewport;
    for (const scene of [this.#zone, this.#wedge, this.#keepOuts, this.#doorway]) {
      scene.draw(this.#project.zone, viewport, this.#palette);
    }
    this.#drawRegion(viewport);
    this.#map.draw(this.#zoneMap, viewport, this.#palette);
    this.#drawPath(viewport);
    this.#robot.draw(this.#project.robot, viewport, this.#palette);
    this.#balls.draw(ballsOf(this.#project), viewport, this.#palette);
    this.#ghosts.draw(this.#project, viewport, this.#palette);
    this.#drawStart();
    this.#drawMoving();
    this.onViewport(page);
  }

  #drawRegion(viewport: Viewport): void {
    if (!this.#project || !this.#samples) this.#region.clear();
    else this.#region.draw(this.#project, this.#samples, viewport, this.#palette);
  }

  #drawPath(viewport: Viewport): void {
    if (!this.#project) return;
    this.#path.draw(this.#course, this.#project.robot.drive.gaugeMm, viewport, this.#palette);
    this.#numberPath();
  }

  /** The balls lie where the run begins: no number of a move stands there. */
  #numberPath(): void {
    if (!this.#viewport || !this.#project) return;
    const placement = this.#run?.outcome.placement ?? [];
    this.#path.number(takenBy(ballsOf(this.#project), placement, this.#viewport), this.#palette);
  }

  #drawStart(): void {
    if (!this.#viewport || !this.#project) return;
    if (!this.#run) {
      for (const scene of [this.#start, this.#trails, this.#troubles, this.#swept]) scene.clear();
      return;
    }
    const balls = ballsOf(this.#project);
    this.#start.draw(balls, this.#run.outcome.placement, this.#viewport, this.#palette);
    this.#trails.draw(this.#run.trace, this.#viewport, this.#palette);
    this.#troubles.draw(this.#run.recording, this.#viewport, this.#palette);
    if (this.#showsSwept) {
      this.#swept.draw(this.#project.robot, this.#run.recording, this.#viewport, this.#palette);
    } else this.#swept.clear();
  }

  #drawMoving(): void {
    if (!this.#viewport || !this.#project) return;
    this.#surface.request();
    this.#ghosts.place(this.#timeS, this.#viewport);
    const { robot } = this.#project;
    this.#root.scale.set(1);
    this.#root.position.set(0, 0);
    if (!this.#run) {
      this.#robot.swing(robot, this.#viewport, this.#palette, null);
      this.#robot.place(entryPose(this.#project.zone, this.#project.robot), this.#viewport);
      this.#balls.hide();
      this.#path.highlight(this.#litMove, this.#palette);
      return;
    }
    const { recording, outcome } = this.#run;
    const timeS = Math.min(Math.max(0, this.#timeS), recording.durationS);
    this.#robot.swing(robot, this.#viewport, this.#palette, armsAt(recording, timeS));
    this.#robot.place(robotAt(recording, timeS), this.#viewport);
    for (let ball = 0; ball < recording.ballCount; ball++) {
      const mark = ballMark(outcome, recording, ball, timeS);
      this.#balls.place(ball, ballAt(recording, ball, timeS), mark, this.#viewport);
    }
    for (const scene of [this.#trails, this.#troubles, this.#swept]) scene.showUntil(timeS);
    if (this.#follows && timeS > 0) this.#follow(robotAt(recording, timeS), this.#viewport);
    this.#path.highlight(this.#litMove >= 0 ? this.#litMove : moveAt(recording, timeS), this.#palette);
  }

  #follow(at: PointMm, viewport: Viewport): void {
    this.#root.scale.set(FOLLOW_SCALE);
    this.#root.position.set(
      viewport.widthPx / 2 - FOLLOW_SCALE * viewport.x(at.xMm),
      viewport.heightPx / 2 - FOLLOW_SCALE * viewport.y(at.yMm),
    );
  }
}
