import { afterEach, beforeEach, expect, vi } from "vitest";

/** Fails a test in whose course something was written to console.error or console.warn. */
const said: string[] = [];

beforeEach(() => {
  said.length = 0;
  for (const method of ["error", "warn"] as const) {
    vi.spyOn(console, method).mockImplementation((...words: unknown[]) => {
      said.push(`console.${method}: ${words.map(String).join(" ")}`);
    });
  }
});

afterEach(() => {
  vi.restoreAllMocks();
  expect(said).toEqual([]);
});
