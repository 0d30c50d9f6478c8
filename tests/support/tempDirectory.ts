import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

const made: string[] = [];

/** A new directory, empty; it goes when the tests of the file have ended. */
export function tempDirectory(): string {
  const directory = mkdtempSync(join(tmpdir(), "wedgeward-"));
  made.push(directory);
  return directory;
}

afterAll(() => {
  for (const directory of made.splice(0)) rmSync(directory, { recursive: true, force: true });
});
