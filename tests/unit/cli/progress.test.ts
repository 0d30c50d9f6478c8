import { describe, expect, it } from "vitest";
import { logProgress, terminalProgress } from "../../../src/cli/progress.ts";

/** A stream that keeps what is written to it. */
function paper(columns: number): { readonly stream: NodeJS.WriteStream; readonly written: string[] } {
  const written: string[] = [];
  const stream = {
    columns,
    write: (text: string) => written.push(text) > 0,
  } as unknown as NodeJS.WriteStream;
  return { stream, written };
}

describe("progress on a terminal", () => {
  it("rewrites one line, no wider than the terminal", () => {
    const { stream, written } = paper(16);
    terminalProgress(stream).show(0.5, "a text that is too long");
    expect(written).toEqual(["\r\x1b[2K 50 % a text th"]);
  });

  it("takes a terminal without a width for a usual one", () => {
    const { stream, written } = paper(0);
    terminalProgress(stream).show(0.25, "x".repeat(100));
    expect(written[0]?.replace("\r\x1b[2K", "")).toHaveLength(79);
  });

  it("clears its line at the end", () => {
    const { stream, written } = paper(80);
    terminalProgress(stream).end();
    expect(written).toEqual(["\r\x1b[2K"]);
  });
});

describe("progress in a log", () => {
  it("is a line for each tenth", () => {
    const { stream, written } = paper(80);
    const progress = logProgress(stream);
    for (const done of [0.05, 0.1, 0.14, 0.31, 0.39, 1]) progress.show(done, "of the work");
    expect(written).toEqual([" 10 % of the work\n", " 31 % of the work\n", "100 % of the work\n"]);
  });
});
