import type { Issue, Parsed } from "../../model/issue.ts";
import { type ProjectFile, parseProjectFile } from "../../model/parse.ts";
import type { Project } from "../../model/project.ts";
import { projectForFile } from "../../model/serialise.ts";
import { type Form, valueAt, withValue } from "./form.ts";
import { History } from "./history.svelte.ts";

/** What a person filled in, and the last sound project that came of it. */
interface Version {
  readonly form: Form;
  readonly issues: readonly Issue[];
  readonly project: Project;
  readonly file: ProjectFile;
}

/**
 * The project under edit. What is typed goes into a form, a project file in the making, which is read and checked like
 * any file after every change; the drawing and the runs keep to the last sound project while something is wrong.
 */
export class Draft {
  readonly #history: History<Version>;
  readonly form = $derived.by(() => this.#history.present.form);
  readonly issues = $derived.by(() => this.#history.present.issues);
  /** The same object until something changes that a run depends on. */
  readonly project = $derived.by(() => this.#history.present.project);
  /** The last sound file: what is kept and handed on. */
  readonly file = $derived.by(() => this.#history.present.file);
  readonly routines = $derived.by(() => this.file.routines);
  /** What the team wrote down beside the project. */
  readonly record = $derived.by(() => this.file.record);
  readonly name = $derived.by(() => String(this.form.name ?? ""));
  readonly canUndo = $derived.by(() => this.#history.canUndo);
  readonly canRedo = $derived.by(() => this.#history.canRedo);
  /** Why the last `tryChange` was refused; empty where it was not. */
  refused = $state.raw<readonly Issue[]>([]);
  /** Called after every change that a person made, undo and redo included. */
  onEdit: () => void = () => {};

  constructor(file: ProjectFile) {
    this.#history = new History(sound(file));
  }

  /** What undoing would bring back, the nearest last. */
  get past(): readonly { readonly project: Project }[] {
    return this.#history.past;
  }

  at(path: string): unknown {
    return valueAt(this.form, path);
  }

  issuesAt(path: string): readonly Issue[] {
    return this.issues.filter((issue) => issue.path === path);
  }

  /** Puts a value under a path of the file; undefined takes it out. See History.push for gestures. */
  edit(path: string, value: unknown, gesture = ""): void {
    this.change((form) => withValue(form, path, value), gesture);
  }

  change(change: (form: Form) => Form, gesture = ""): void {
    this.#history.push(this.#versionOf(change(this.form)), gesture);
    this.onEdit();
  }

  /**
   * As `change`, but only if that changes something and nothing more is wrong afterwards: for drags, which cannot go where
   * nothing can be. While a field is wrong, the last sound project takes the change as well, so that the drawing follows.
   */
  tryChange(change: (form: Form) => Form, gesture = ""): boolean {
    const before = this.#history.present;
    this.refused = [];
    const form = change(before.form);
    if (JSON.stringify(form) === JSON.stringify(before.form)) return false;
    const version = this.#versionOf(form);
    if (version.issues.length > 0) {
      const known = new Set(before.issues.map(issueKey));
      const read = readForm(change(formOf(before.file)));
      const added = version.issues.filter((issue) => !known.has(issueKey(issue)));
      if (!read.ok || added.length > 0) {
        this.refused = added;
        return false;
      }
      this.#history.push({ ...version, project: read.value.project, file: read.value }, gesture);
    } else this.#history.push(version, gesture);
    this.onEdit();
    return true;
  }

  /** Gives the project another name without a step of its own in the history. */
  rename(name: string): void {
    this.#history.amend(this.#versionOf(withValue(this.form, "name", name)));
  }

  /** Puts back what was being filled in when the page was left; no step in the history. */
  fillIn(form: Form): void {
    this.#history.amend(this.#versionOf(form));
  }

  seal(): void {
    this.#history.seal();
  }

  undo(): void {
    if (!this.canUndo) return;
    this.#history.undo();
    this.onEdit();
  }

  redo(): void {
    if (!this.canRedo) return;
    this.#history.redo();
    this.onEdit();
  }

  #versionOf(form: Form): Version {
    const before = this.#history.present;
    const read = readForm(form);
    if (!read.ok) return { ...before, form, issues: read.issues };
    const same = runKey(form) === runKey(before.form) && before.issues.length === 0;
    const project = same ? before.project : read.value.project;
    return { form, issues: [], project, file: read.value };
  }
}

function sound(file: ProjectFile): Version {
  return { form: formOf(file), issues: [], project: file.project, file };
}

function formOf(file: ProjectFile): Form {
  return projectForFile(file.project, file.routines, file.record) as unknown as Form;
}

function issueKey({ path, code }: Issue): string {
  return `${path} ${code}`;
}

/** Reads a form as the file it stands for. */
export function readForm(form: Form): Parsed<ProjectFile> {
  return parseProjectFile(JSON.stringify(form));
}

/** All that a run depends on. */
function runKey({ name: _name, note: _note, routines: _routines, record: _record, ...rest }: Form): string {
  return JSON.stringify(rest);
}
