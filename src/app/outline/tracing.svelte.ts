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
}

/** The photo under an outline, and what is marked in it. It never leaves the machine. */
export class Tracing {
  under = $state.raw<Under | null>(null);
  /** The file picked last is no picture. */
  unreadable = $state(false);
  /** The browser could not keep the photo. */
  unkept = $state(false);
  readonly #history = new History<Marks | null>(null);
  readonly marks = $derived.by(() => this.#history.present);
  readonly canUndo = $derived.by(() => this.#history.canUndo);
  readonly canRedo = $derived.by(() => this.#history.canRedo);
  readonly #lengthMm: () => number;
  #pageId = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

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
    this.#lay(kept.photo, kept.marks);
  }

  async pick(file: Blob): Promise<void> {
    const photo = await readPhoto(file);
    this.unreadable = photo === null;
    if (!photo) return;
    this.#lay(photo, firstMarks(photo.widthPx, photo.heightPx, this.#lengthMm()));
    this.#keepSoon();
  }

  async remove(): Promise<void> {
    clearTimeout(this.#timer);
    this.#clear();
    if (this.#pageId !== "") this.unkept = !(await forgetPhoto(this.#pageId));
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
    this.#history.push(marks, gesture);
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

  /** Writes down what still waits, and lets go of the photo. */
  close(): void {
    void this.#keep();
    this.#clear();
  }

  #lay(photo: Photo, marks: Marks): void {
    this.#clear();
    this.under = { photo, url: URL.createObjectURL(photo.blob) };
    this.#history.reset(marks);
  }

  #clear(): void {
    if (this.under) URL.revokeObjectURL(this.under.url);
    this.under = null;
    this.#history.reset(null);
  }

  #keepSoon(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#keep(), KEEP_AFTER_MS);
  }

  async #keep(): Promise<void> {
    clearTimeout(this.#timer);
    const { marks, under } = this;
    if (!marks || !under || this.#pageId === "") return;
    this.unkept = !(await keepPhoto(this.#pageId, { photo: under.photo, marks }));
  }
}
