import type { Issue } from "../../model/issue.ts";
import { type ProjectFile, parseProjectFile } from "../../model/parse.ts";
import { serialiseProject } from "../../model/serialise.ts";
import { noticeTexts } from "../../texts/english/notice.ts";
import { DEFAULT_FIELD, fieldInWords, SHIPPED_FIELDS } from "../fields.ts";
import { Draft } from "../project/draft.svelte.ts";
import type { Shown } from "../project/link.ts";
import { isLink } from "../project/linkKey.ts";
import { freeName, type Page } from "../project/page.ts";
import type { Rescue, Rescued } from "../project/rescue.ts";
import type { Shelf, Writing } from "../project/shelf.svelte.ts";
import {
  forgetSetting,
  RESCUE,
  readTabSetting,
  settingsLike,
  writeSetting,
  writeTabSetting,
} from "./settings.ts";

/** A file or link that could not be opened, and everything that is wrong with it. */
export interface BadFile {
  readonly name: string;
  readonly issues: readonly Issue[];
}

/** How long after the last change the project is written down, ms. */
const SAVE_AFTER_MS = 400;

export type SaveState = "untouched" | "waiting" | "saved" | "failed";

/** The project that lies open: where it came from, and that nothing of it is lost. */
export class Desk {
  draft = $state.raw<Draft | null>(null);
  /** Where it is kept; null for an example or link that nobody has changed yet. */
  page = $state.raw<Page | null>(null);
  /** Id of the example it began as; "" for none. */
  exampleId = $state("");
  badFile = $state.raw<BadFile | null>(null);
  /** What happened to the project without anyone's doing; "" for nothing. */
  notice = $state("");
  saveState = $state<SaveState>("untouched");
  readonly shelf: Shelf;
  /** Called when another project lies on the desk; `shown` is what a link wants to be seen. */
  onOpen: (shown: Shown | null) => void = () => {};
  /** Called after every change of it. */
  onEdit: () => void = () => {};
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Whether something has changed that no writing has begun for. */
  #isDue = false;
  #writing: Promise<void> = Promise.resolve();
  /** Under which id it will be kept, where it has no page yet. */
  #nextId: string;
  readonly #rescueKey: string;

  constructor(shelf: Shelf) {
    this.shelf = shelf;
    this.#nextId = shelf.newId();
    this.#rescueKey = RESCUE + this.#nextId;
  }

  /** What the address asks for, else what was open when the page was left, else the default example. */
  async start(hash: string): Promise<void> {
    const listed = this.shelf.list();
    let rescued: Rescued | null = null;
    if (settingsLike(RESCUE).length > 0) {
      const { takeRescued } = await import("../project/rescue.ts");
      await listed;
      rescued = await takeRescued(this.shelf);
      const { homeless } = rescued;
      if (homeless) return this.openText(homeless.text, homeless.name);
    }
    const isTaken = rescued?.hashes.includes(hash) || (isReload() && readTabSetting("link") === hash);
    if (isLink(hash) && !isTaken && (await this.openLink(hash))) return;
    // A link that was refused stays told beside what is opened in its place.
    const refused = this.badFile;
    await listed;
    await this.#openLast();
    this.badFile = refused;
  }

  /** The project of a link is a page now: a reload under way, which still has the link in its address, must not open that anew. */
  takeLink(hash: string): void {
    writeTabSetting("link", hash);
  }

  async #openLast(): Promise<void> {
    const last = readTabSetting("open") ?? "";
    if (last !== "" && (await this.openPage(last))) return;
    await this.openExample(readTabSetting("field") ?? DEFAULT_FIELD);
  }

  async openExample(id: string): Promise<void> {
    const example = SHIPPED_FIELDS.find((each) => each.id === id) ?? SHIPPED_FIELDS[0];
    if (!example) return;
    const read = parseProjectFile(await example.load());
    if (!read.ok) return this.#refuse(`${example.id}.json`, read.issues);
    await this.#lay(fieldInWords(example.id, read.value), null, example.id);
    writeTabSetting("field", example.id);
  }

  /** Whether there is such a page. */
  async openPage(id: string): Promise<boolean> {
    await this.flush();
    const found = await this.shelf.open(id);
    if (!found) return false;
    await this.#lay(found.file, found.page, "");
    if (found.page.form) this.draft?.fillIn(found.page.form);
    return true;
  }

  /** Opens a file's text as a project of the team's own. */
  async openText(text: string, name: string): Promise<void> {
    const read = parseProjectFile(text);
    if (!read.ok) return this.#refuse(name, read.issues);
    await this.#lay(read.value, null, "");
    this.#changed();
    await this.flush();
  }

  /** Whether it could be opened. The project is kept once someone changes it: a link may be opened many times. */
  async openLink(hash: string): Promise<boolean> {
    const { readLink } = await import("../project/link.ts");
    const read = await readLink(hash);
    if (!read.ok) {
      this.#refuse(noticeTexts.theLink, read.issues);
      return false;
    }
    await this.#lay(read.value.file, null, "", read.value.shown);
    return true;
  }

  /** A copy with a name of its own, which is open afterwards. */
  async duplicate(): Promise<void> {
    const { draft } = this;
    if (!draft) return;
    await this.flush();
    this.page = null;
    this.#nextId = this.shelf.newId();
    draft.rename(this.#freeName(draft.name));
    this.#changed();
    await this.flush();
  }

  async remove(page: Page): Promise<void> {
    // Fetched late: few ever have a photo.
    void import("../outline/photoStore.ts").then(({ forgetPhoto }) => forgetPhoto(page.id));
    if (page.id === this.page?.id) {
      clearTimeout(this.#timer);
      this.#isDue = false;
      await this.#writing;
      this.page = null;
      this.saveState = "untouched";
      forgetSetting(this.#rescueKey);
      await this.shelf.remove(page.id);
      await this.openExample(DEFAULT_FIELD);
    } else await this.shelf.remove(page.id);
  }

  /** The last sound project as the text of its file. */
  fileText(): string {
    const file = this.draft?.file;
    return file ? serialiseProject(file.project, file.routines, file.record) : "";
  }

  /** The same without what the team wrote down, which is its own: what a link hands on. */
  linkText(): string {
    const file = this.draft?.file;
    return file ? serialiseProject(file.project, file.routines) : "";
  }

  /**
   * As the page goes: whatever is not kept yet is put where that takes no time, and begun to be written, which ends with the page.
   * @param hash fragment of the address
   */
  leave(hash: string): void {
    const { draft, page } = this;
    if (draft && (this.saveState === "waiting" || this.saveState === "failed")) {
      if (!page) draft.rename(this.#freeName(draft.name));
      const id = page?.id ?? this.#nextId;
      const rescue: Rescue = { ...this.#written(draft), id, revision: page?.revision ?? 0, hash };
      writeSetting(this.#rescueKey, JSON.stringify(rescue));
      writeTabSetting("open", id);
    }
    void this.flush();
  }

  /** Writes down at once what still waits. */
  flush(): Promise<void> {
    if (!this.#isDue) return this.#writing;
    clearTimeout(this.#timer);
    this.#writing = this.#writing.then(() => this.#save());
    return this.#writing;
  }

  async #lay(
    file: ProjectFile,
    page: Page | null,
    exampleId: string,
    shown: Shown | null = null,
  ): Promise<void> {
    await this.flush();
    this.badFile = null;
    this.notice = "";
    this.page = page;
    this.#nextId = this.shelf.newId();
    this.exampleId = exampleId;
    this.saveState = page ? "saved" : "untouched";
    writeTabSetting("open", page?.id ?? "");
    // One for each project: what was still being worked out for the one before must not be written into this.
    const draft = new Draft(file);
    draft.onEdit = () => draft === this.draft && this.#changed();
    this.draft = draft;
    this.onOpen(shown);
  }

  #refuse(name: string, issues: readonly Issue[]): void {
    this.badFile = { name, issues };
  }

  #changed(): void {
    this.#isDue = true;
    this.saveState = "waiting";
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), SAVE_AFTER_MS);
    this.onEdit();
  }

  async #save(): Promise<void> {
    const { draft } = this;
    if (!draft) return;
    this.#isDue = false;
    if (!this.page) draft.rename(this.#freeName(draft.name));
    const page = this.page
      ? await this.#saveOver(this.page)
      : await this.shelf.add(this.#written(draft), this.#nextId);
    if (!page) {
      this.saveState = "failed";
      return;
    }
    this.page = page;
    writeTabSetting("open", page.id);
    // Kept only now, and only if nothing has changed meanwhile.
    if (this.#isDue) return;
    this.saveState = "saved";
    forgetSetting(this.#rescueKey);
  }

  async #saveOver(known: Page): Promise<Page | null> {
    const { draft } = this;
    if (!draft) return null;
    const saved = await this.shelf.save(known, this.#written(draft));
    if (saved?.kind !== "parted") return saved?.page ?? null;
    draft.rename(saved.page.name);
    this.notice = noticeTexts.parted(known.name, saved.page.name);
    return saved.page;
  }

  #written(draft: Draft): Writing {
    const form = draft.issues.length > 0 ? draft.form : null;
    return { name: draft.name, text: this.fileText(), form };
  }

  #freeName(wanted: string): string {
    return freeName(
      wanted,
      this.shelf.pages.filter((page) => page.id !== this.page?.id).map((page) => page.name),
    );
  }
}

function isReload(): boolean {
  const [how] = performance.getEntriesByType("navigation");
  return (how as PerformanceNavigationTiming | undefined)?.type === "reload";
}
