import { History } from "../project/history.svelte.ts";
import { firstMarks, type MarkId, type Marks, type PhotoPoint, withMark } from "./marks.ts";
import { type Photo, readPhoto } from "./photo.ts";
import { forgetPhoto, keepPhoto, keptPhoto } from "./photoStore.ts";

/** How long after the last change photo and marks are written down, ms. */
const KEEP_AFTER_MS = 400;

interface Under {
  readonly photo: Photo;
  /** Of this page only: gone when it closes. */
  readonly url: string;
  readonly marks: Marks;
}

/** The photo under an outline, and what is marked in it. It never leaves the machine. */
export class Tracing {
  /** The file picked last is no picture. */
  unreadable = $state(false);
  /** The browser could not keep the photo. */
  unkept = $state(false);
  /** Photos with their marks; null where there is none, or where it was thrown away. */
  readonly #history = new History<Under | null>(null);
  readonly under = $derived.by(() => this.#history.present);
  readonly marks = $derived.by(() => this.#history.present?.marks ?? null);
  readonly canUndo = $derived.by(() => this.#history.canUndo);
  readonly canRedo = $derived.by(() => this.#history.canRedo);
  /** There is a photo, or one that can be brought back. */
  readonly isUsed = $derived.by(() => this.under !== null || this.canUndo || this.canRedo);
  readonly #lengthMm: () => number;
  #pageId = "";
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Something is not written down yet. */
  #waits = false;
  readonly #urls: string[] = [];

  /** @param lengthMm how long the robot is, for the first guess at the scale */
  constructor(lengthMm: () => number) {
    this.#lengthMm = lengthMm;
  }

  /** The page beside which the photo is kept; "" while the project is on none. */
  async beside(pageId: string): Promise<void> {
    if (pageId === this.#pageId) return;
    this.#pageId = pageId;
    if (pageId === "") return;
    if (this.under) return this.#keepSoon();
    const kept = await keptPhoto(pageId);
    if (!kept || this.under || pageId !== this.#pageId) return;
    this.#history.reset(this.#laid(kept.photo, kept.marks));
  }

  async pick(file: Blob): Promise<void> {
    const photo = await readPhoto(file);
    this.unreadable = photo === null;
    if (!photo) return;
    const laid = this.#laid(photo, firstMarks(photo.widthPx, photo.heightPx, this.#lengthMm()));
    if (this.under || this.canUndo) this.#history.push(laid);
    else this.#history.reset(laid);
    this.#keepSoon();
  }

  /** Throws the photo away; while the dialog is open, undo brings it back. */
  remove(): void {
    this.#history.push(null);
    void this.#keep(true);
  }

  /** Whether a mark could be laid there. */
  mark(id: MarkId, to: PhotoPoint, gesture: string): boolean {
    const { marks } = this;
    const photo = this.under?.photo;
    if (!marks || !photo) return false;
    const inside = {
      x: Math.min(photo.widthPx, Math.max(0, to.x)),
      y: Math.min(photo.heightPx, Math.max(0, to.y)),
    };
    const next = withMark(marks, id, inside);
    if (next) this.change(next, gesture);
    return next !== null;
  }

  change(marks: Marks, gesture = ""): void {
    if (this.under) this.#history.push({ ...this.under, marks }, gesture);
    this.#keepSoon();
  }

  undo(): void {
    this.#history.undo();
    this.#keepSoon();
  }

  redo(): void {
    this.#history.redo();
    this.#keepSoon();
  }

  /** Writes down what still waits, and lets go of the photos. */
  close(): void {
    void this.#keep();
    for (const url of this.#urls.splice(0)) URL.revokeObjectURL(url);
    this.#history.reset(null);
  }

  #laid(photo: Photo, marks: Marks): Under {
    const url = URL.createObjectURL(photo.blob);
    this.#urls.push(url);
    return { photo, url, marks };
  }

  #keepSoon(): void {
    this.#waits = true;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#keep(), KEEP_AFTER_MS);
  }

  async #keep(now = this.#waits): Promise<void> {
    clearTimeout(this.#timer);
    this.#waits = false;
    const { under } = this;
    if (!now || this.#pageId === "") return;
    const kept = under ? keepPhoto(this.#pageId, under) : forgetPhoto(this.#pageId);
    this.unkept = !(await kept);
  }
}
