import type { Issue } from "../model/issue.ts";
import { tableTexts as t } from "../texts/english/table.ts";

/** A line of a small table, its cells trimmed. */
export interface SheetRow {
  /** As an editor counts lines, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A table as a spreadsheet writes it. */
export interface Sheet {
  readonly rows: readonly SheetRow[];
  /** Whether numbers may be written with a comma: not where it parts the cells. */
  readonly decimalComma: boolean;
}

const SEPARATORS = [";", "\t", ","] as const;

/**
 * Reads text pasted or saved from a spreadsheet: cells parted by semicolons, tabs or commas (whichever of these comes first in this
 * order), quotes around cells taken off, empty lines and lines that begin with # left out.
 */
export function readSheet(text: string): Sheet {
  const lines = text
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\r|\n/)
    .map((content, i) => ({ line: i + 1, content }))
    .filter(({ content }) => content.replace(/[;,\s]/g, "") !== "" && !content.trimStart().startsWith("#"));
  const separator = SEPARATORS.find((each) => lines.some(({ content }) => content.includes(each))) ?? ",";
  const rows = lines.map(({ line, content }) => ({
    line,
    cells: content.split(separator).map((cell) =>
      cell
        .trim()
        .replace(/^"(.*)"$/, "$1")
        .trim(),
    ),
  }));
  return { rows, decimalComma: separator !== "," };
}

/** A number with point or, where the sheet allows it, comma; NaN for anything else. */
export function sheetNumber(cell: string, decimalComma: boolean): number {
  const text = (decimalComma ? cell.replace(",", ".") : cell).replace("\u2212", "-");
  return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(text) ? Number(text) : Number.NaN;
}

/** An issue at a line of the sheet. */
export function sheetIssue(
  row: SheetRow,
  code: string,
  message: string,
  got: string,
  expected: string,
): Issue {
  return { code, path: t.line(row.line), message, got: got === "" ? t.nothing : got, expected };
}
