import { issueTexts as t } from "../texts/english/issue.ts";
import type { Issue } from "./issue.ts";
import type { JsonValue } from "./json.ts";

/** Nobody reads more; a broken file could give one for each of its bytes. */
const MAX_ISSUES = 200;
const MAX_PATH_LENGTH = 120;

/** Collects what is wrong with a file, in the order in which it is found. */
export class Findings {
  private readonly issues: Issue[] = [];
  private dropped = 0;

  add(issue: Issue): void {
    if (this.issues.length >= MAX_ISSUES) this.dropped++;
    // Keys come from the file and stand in paths: nothing in them may move a terminal's cursor.
    else this.issues.push({ ...issue, path: cut(issue.path.replace(/\p{Cc}+/gu, " "), MAX_PATH_LENGTH) });
  }

  addAll(issues: readonly Issue[]): void {
    for (const issue of issues) this.add(issue);
  }

  /** Grows with every issue: compare before and after to know whether a part was read cleanly. */
  get count(): number {
    return this.issues.length + this.dropped;
  }

  /** All issues; when there were too many, the last one says so. */
  all(): readonly Issue[] {
    if (this.dropped === 0) return this.issues;
    const message = t.more(this.dropped);
    return [
      ...this.issues,
      { code: "too-many-issues", path: "", message, got: t.issues(this.count), expected: t.none },
    ];
  }

  /** Swallows everything: for the inside of something whose absence has been reported already. */
  muted(): Findings {
    return new MutedFindings();
  }
}

class MutedFindings extends Findings {
  override add(): void {}
  override muted(): Findings {
    return this;
  }
}

/** A value as the file has it, printed shortly and safely. */
export function describe(value: JsonValue): string {
  if (typeof value === "string") return `"${cut(value.replace(/\p{Cc}+/gu, " "), 40)}"`;
  if (Array.isArray(value)) return t.listOf(value.length);
  if (value instanceof Map) return t.objectWith(value.size);
  return String(value);
}

/** What sort of value it is, with its article. */
export function noun(value: JsonValue): string {
  if (value === null) return "null";
  if (typeof value === "string") return t.noun.text;
  if (typeof value === "number") return t.noun.number;
  if (typeof value === "boolean") return `${value}`;
  return Array.isArray(value) ? t.noun.list : t.noun.object;
}

function cut(text: string, length: number): string {
  return text.length > length ? `${text.slice(0, length)}…` : text;
}
