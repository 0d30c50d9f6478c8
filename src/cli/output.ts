import type { Issue } from "../model/issue.ts";
import { issuesText } from "./issues.ts";

/** Exit codes; 130 for a command stopped with Ctrl-C is in interrupt.ts. */
export const FINE = 0;
export const FAULT = 1;
export const BAD_INPUT = 2;

export function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

export function printJson(value: object): void {
  print(JSON.stringify(value, null, 2));
}

/**
 * Reports bad input, all of it: as text on standard error, or as the one JSON object on standard output.
 * @param source what the issues are about: a file, or the command line
 */
export function reject(source: string, issues: readonly Issue[], json: boolean): number {
  if (json) printJson({ source, issues });
  else process.stderr.write(`${issuesText(source, issues)}\n`);
  return BAD_INPUT;
}

/** A reader that has seen enough (`… | head`) is no fault. */
export function endQuietlyWhenNobodyReads(): void {
  process.stdout.on("error", (fault: NodeJS.ErrnoException) => {
    if (fault.code === "EPIPE") process.exit(FINE);
    throw fault;
  });
}
