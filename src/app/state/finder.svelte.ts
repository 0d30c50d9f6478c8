import { Work } from "./work.svelte.ts";

/** How a search ended, and what it found; a stopped one may have found a part. */
export interface Found<T> {
  readonly result: T;
  readonly status: "done" | "stopped";
}

/** What a search tells about itself and finds on its way, and how it learns that it is to stop. */
type Course<T> = ReturnType<Work["begin"]> & { readonly onKnown: (soFar: T) => void };

/** Something that is looked for on demand, because it takes a while: one search at a time. */
export class Finder<Asked extends readonly unknown[], T> {
  result = $state.raw<T | null>(null);
  status = $state<"idle" | "running" | "done" | "stopped" | "failed">("idle");
  readonly work = new Work();
  fault = $state("");
  readonly #search: (course: Course<T>, ...asked: Asked) => Promise<Found<T>>;

  constructor(search: (course: Course<T>, ...asked: Asked) => Promise<Found<T>>) {
    this.#search = search;
  }

  async find(...asked: Asked): Promise<void> {
    this.clear();
    const work = this.work.begin();
    const onKnown = (soFar: T): void => {
      if (this.work.owns(work.signal)) this.result = soFar;
    };
    const course = { ...work, onKnown };
    this.status = "running";
    try {
      const { result, status } = await this.#search(course, ...asked);
      if (!this.work.owns(course.signal)) return;
      this.result = result;
      this.status = status;
    } catch (reason) {
      if (!this.work.owns(course.signal)) return;
      this.fault = reason instanceof Error ? reason.message : String(reason);
      this.status = course.signal.aborted ? "stopped" : "failed";
    }
  }

  /** Forgets everything: it was about another project or routine. */
  clear(): void {
    this.work.drop();
    this.result = null;
    this.status = "idle";
  }
}
