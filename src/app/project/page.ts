import type { Issue } from "../../model/issue.ts";
import { type ProjectFile, parseProjectFile } from "../../model/parse.ts";
import { issueTexts } from "../../texts/english/issue.ts";
import { storedTexts as t } from "../../texts/english/stored.ts";
import type { Form } from "./form.ts";

/** One project as the browser keeps it. */
export interface Page {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly savedAtMs: number;
  /** Counts every save, in whatever tab it was made. */
  readonly revision: number;
  /** The last sound project as the text of its file. */
  readonly text: string;
  /** What was being filled in, where that was not sound; null where the file says all. */
  readonly form: Form | null;
}

export type ReadPage =
  | { readonly ok: true; readonly page: Page; readonly file: ProjectFile }
  | { readonly ok: false; readonly reason: string; readonly issues: readonly Issue[] };

/** Reads what the store holds under a key: another version, another program or a fault may have written it. */
export function readPage(value: unknown): ReadPage {
  if (!isPage(value)) return { ok: false, reason: t.foreign, issues: [] };
  const file = parseProjectFile(value.text);
  if (file.ok) return { ok: true, page: value, file: file.value };
  return { ok: false, reason: file.issues[0]?.message ?? t.unreadable, issues: file.issues };
}

export function isPage(value: unknown): value is Page {
  if (typeof value !== "object" || value === null) return false;
  const page = value as Partial<Record<keyof Page, unknown>>;
  return (
    typeof page.id === "string" &&
    typeof page.name === "string" &&
    typeof page.savedAtMs === "number" &&
    Number.isSafeInteger(page.revision) &&
    typeof page.text === "string" &&
    (page.form === null || (typeof page.form === "object" && !Array.isArray(page.form)))
  );
}

/** A name nobody has yet: "Our gym", then "Our gym (2)". */
export function freeName(wanted: string, taken: readonly string[]): string {
  const bare = wanted.replace(/ \(\d+\)$/, "").trim() || issueTexts.unnamed.project;
  if (!taken.includes(wanted.trim()) && wanted.trim() !== "") return wanted.trim();
  for (let n = 2; ; n++) if (!taken.includes(`${bare} (${n})`)) return `${bare} (${n})`;
}
