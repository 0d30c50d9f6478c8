import { tick } from "svelte";
import type { PointMm } from "../../model/zone.ts";
import { outlineTexts as t } from "../../texts/english/outline.ts";
import { moveHandle } from "../drawing/moveHandle.ts";
import type { Draft } from "../project/draft.svelte.ts";
import type { Form } from "../project/form.ts";
import { type CornerGrip, cornerId } from "./cornerGrips.ts";
import {
  FOOTPRINT,
  GROUND,
  pointsAt,
  pushersAt,
  withOutline,
  withoutPoint,
  withPointInserted,
} from "./outlineForm.ts";
import { boxAround, leftMirrored, type MarkedOutline, nearestEdges } from "./sides.ts";

/** Edges that a press beside the outline tries, the nearest first. */
const EDGES_TRIED = 3;

/** An outline under the pencil. Every change goes to the project at once, if the project can take it. */
export class Sketching {
  readonly #draft: Draft;
  /** Sets the focus on a handle of the sheet. */
  readonly #focus: (handle: string) => void;
  /** Corner in hand; −1 for none. */
  #picked = $state(-1);
  /** Why the last change could not be; "" when it could. */
  reason = $state("");
  /** The outline on the floor is drawn, not the one at ball height. */
  onGround = $state(false);
  readonly traced = $derived(this.onGround ? GROUND : FOOTPRINT);
  readonly points = $derived.by(() => pointsAt(this.#draft.form, this.traced));
  readonly pushers = $derived.by(() => pushersAt(this.#draft.form, this.traced));
  readonly picked = $derived(this.points?.[this.#picked] ? this.#picked : -1);

  constructor(draft: Draft, focus: (handle: string) => void) {
    this.#draft = draft;
    this.#focus = focus;
  }

  pick(grip: CornerGrip): void {
    this.#picked = grip.kind === "corner" ? grip.index : -1;
  }

  move(grip: CornerGrip, to: PointMm, gesture: string): boolean {
    this.reason = "";
    // Half the way to where no corner can be added, none is.
    if (grip.kind === "add") return this.#try((form) => grip.move(form, to), gesture);
    return moveHandle({ tryChange: (change, name) => this.#try(change, name) }, grip, to, gesture);
  }

  /** Adds a corner on an edge, in its middle if no place is given. */
  add(edge: number, to?: PointMm): boolean {
    const a = this.points?.[edge];
    const b = this.points?.[(edge + 1) % (this.points?.length ?? 1)];
    if (!a || !b) return false;
    const at = to ?? { xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 };
    const rounded = { xMm: Math.round(at.xMm), yMm: Math.round(at.yMm) };
    const went = this.#try((form) => withPointInserted(form, this.traced, edge, rounded));
    if (went) void this.#choose(edge + 1);
    return went;
  }

  /** Adds a corner at a place, on the nearest edge that can go there. */
  addAt(at: PointMm): void {
    this.reason = "";
    nearestEdges(this.points ?? [], at)
      .slice(0, EDGES_TRIED)
      .some((edge) => this.add(edge, at));
  }

  take(corner: number): void {
    this.reason = "";
    if (this.#try((form) => withoutPoint(form, this.traced, corner)))
      void this.#choose(Math.max(0, corner - 1));
  }

  /** Whether the key means something here. */
  key(grip: CornerGrip, name: string): boolean {
    if (grip.kind !== "corner") return false;
    this.reason = "";
    if (name === "Delete" || name === "Backspace") this.take(grip.index);
    else if (name === "Insert") this.add(grip.index);
    else return false;
    return true;
  }

  copyLeftSide(): void {
    const points = this.points ?? [];
    this.#redraw(leftMirrored({ points, edges: points.map((_, edge) => this.pushers.includes(edge)) }));
  }

  beginWithBox(): void {
    this.#redraw(boxAround(this.points ?? []));
  }

  /** A ground that is the whole footprint so far begins as that, to be changed. */
  draw(ground: boolean): void {
    const { points } = this;
    this.onGround = ground;
    this.#picked = -1;
    this.reason = "";
    if (!ground || this.points || !points) return;
    const outlineMm = points.map(({ xMm, yMm }) => [xMm, yMm]);
    this.#draft.edit("robot.ground", { kind: "polygon", outlineMm });
  }

  #redraw(made: MarkedOutline | null): void {
    this.reason = made ? "" : t.notTwo;
    if (made) this.#try((form) => withOutline(form, this.traced, made.points, made.edges));
  }

  async #choose(corner: number): Promise<void> {
    this.#picked = corner;
    await tick();
    this.#focus(cornerId(corner));
  }

  /** The first reason counts: where a drag is halved on its way, that is why it could not go all the way. */
  #try(change: (form: Form) => Form, gesture = ""): boolean {
    const went = this.#draft.tryChange(change, gesture);
    if (!went && this.reason === "") this.reason = this.#draft.refused[0]?.message ?? "";
    return went;
  }
}
