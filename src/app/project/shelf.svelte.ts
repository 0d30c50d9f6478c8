import type { ProjectFile } from "../../model/parse.ts";
import { storedTexts as t } from "../../texts/english/stored.ts";
import type { Form } from "./form.ts";
import { freeName, isPage, type Page, readPage } from "./page.ts";
import type { Store } from "./store.ts";

/** A stored entry that could not be read: kept as it is until someone throws it away. */
export interface Aside {
  readonly key: string;
  readonly name: string;
  readonly reason: string;
  readonly text: string;
}

/** What is written down about a project. */
export interface Writing {
  readonly name: string;
  readonly text: string;
  readonly form: Form | null;
}

export type Saved =
  | { readonly kind: "saved" | "new"; readonly page: Page }
  /** Another tab had saved the same project meanwhile: this one now has a page of its own. */
  | { readonly kind: "parted"; readonly page: Page };

const PAGE = "page-";
const ASIDE = "aside-";

/** The team's projects in this browser. */
export class Shelf {
  /** Newest first. */
  pages = $state.raw<readonly Page[]>([]);
  aside = $state.raw<readonly Aside[]>([]);
  /** Why nothing can be kept; "" while all is well. */
  fault = $state("");
  readonly #store: Store;
  readonly #clock: () => number;
  readonly newId: () => string;

  constructor(store: Store, clock: () => number = Date.now, newId: () => string = () => crypto.randomUUID()) {
    this.#store = store;
    this.#clock = clock;
    this.newId = newId;
  }

  /** Reads everything; what cannot be read is put aside and told in `aside`. */
  async list(): Promise<void> {
    await this.#try(async () => {
      const pages: Page[] = [];
      const aside: Aside[] = [];
      for (const [key, value] of await this.#store.entries()) {
        if (key.startsWith(ASIDE)) aside.push(asideOf(key, value));
        if (!key.startsWith(PAGE)) continue;
        const read = readPage(value);
        if (read.ok) pages.push(read.page);
        else aside.push(await this.#putAside(key, value, read.reason));
      }
      this.pages = pages.sort((a, b) => b.savedAtMs - a.savedAtMs);
      this.aside = aside;
    });
  }

  /** A page and its project; null where there is none (or it had to be put aside). */
  async open(id: string): Promise<{ readonly page: Page; readonly file: ProjectFile } | null> {
    const found = await this.#try(async () => {
      const read = readPage(await this.#store.get(PAGE + id));
      return read.ok ? { page: read.page, file: read.file } : null;
    });
    return found ?? null;
  }

  /** Writes a project to a page of its own, under a name nobody has. */
  async add(writing: Writing, id = this.newId()): Promise<Page | null> {
    const name = freeName(
      writing.name,
      this.pages.map((page) => page.name),
    );
    const page: Page = { ...writing, name, id, savedAtMs: this.#clock(), revision: 1 };
    const done = await this.#try(async () => {
      await this.#store.update(PAGE + page.id, () => page);
      return page;
    });
    if (done) this.#put(page);
    return done ?? null;
  }

  /**
   * Writes over a page as this tab knows it. Where another tab has written since, or thrown the page away, that stays,
   * and this writing gets a page of its own.
   */
  async save(known: Page, writing: Writing): Promise<Saved | null> {
    const next: Page = { ...known, ...writing, savedAtMs: this.#clock(), revision: known.revision + 1 };
    let met = false;
    const done = await this.#try(async () => {
      await this.#store.update(PAGE + known.id, (old) => {
        met = isPage(old) && old.revision === known.revision;
        return met ? next : old;
      });
      return true;
    });
    if (!done) return null;
    if (met) {
      this.#put(next);
      return { kind: "saved", page: next };
    }
    await this.list();
    const page = await this.add(writing);
    return page && { kind: "parted", page };
  }

  async remove(id: string): Promise<void> {
    await this.#try(() => this.#store.remove(PAGE + id));
    this.pages = this.pages.filter((page) => page.id !== id);
  }

  async throwAside(key: string): Promise<void> {
    await this.#try(() => this.#store.remove(key));
    this.aside = this.aside.filter((each) => each.key !== key);
  }

  async #putAside(key: string, value: unknown, reason: string): Promise<Aside> {
    const to = `${ASIDE}${this.#clock()}-${key}`;
    const kept = { value, reason };
    await this.#store.update(to, () => kept);
    await this.#store.remove(key);
    return asideOf(to, kept);
  }

  #put(page: Page): void {
    this.pages = [page, ...this.pages.filter((each) => each.id !== page.id)];
  }

  async #try<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      const result = await work();
      this.fault = "";
      return result;
    } catch (reason) {
      this.fault = reason instanceof Error ? reason.message : String(reason);
      return undefined;
    }
  }
}

function asideOf(key: string, kept: unknown): Aside {
  const { value, reason } = (kept ?? {}) as { value?: unknown; reason?: unknown };
  const page = (typeof value === "object" && value !== null ? value : {}) as {
    name?: unknown;
    text?: unknown;
  };
  return {
    key,
    name: typeof page.name === "string" ? page.name : t.noName,
    reason: typeof reason === "string" ? reason : "",
    text: typeof page.text === "string" ? page.text : plainText(value),
  };
}

function plainText(value: unknown): string {
  try {
    return JSON.stringify(value, null, 1) ?? "";
  } catch {
    return String(value);
  }
}
