import { join } from "node:path";
import type { Page } from "playwright-core";
import { top } from "./sourceCheck.ts";

/** For looking at a page that is perhaps stuck, ms. */
const TIMEOUT_MS = 10_000;
/** Of what stands on the page, characters. */
const MOST_TEXT = 9000;

let pictures = 0;

/** What a page looked like when its test failed: where it stood, what it said, and a picture below `dist`. Never throws. */
export async function lookOf(page: Page, test: string, faults: readonly string[]): Promise<string> {
  const path = join(top, "dist/failed", `${test.replace(/\W+/g, "-").slice(0, 60)}-${++pictures}.png`);
  const or = (reason: unknown): string => `not to be had: ${String(reason).split("\n")[0]}`;
  const picture = await page
    .screenshot({ path, timeout: TIMEOUT_MS })
    .then(() => path)
    .catch(or);
  const said = await page.locator("body").ariaSnapshot({ timeout: TIMEOUT_MS }).catch(or);
  const focus = await page.evaluate(() => document.activeElement?.outerHTML.slice(0, 200) ?? "").catch(or);
  return [
    `The page of "${test}" at ${page.url().slice(0, 200)}`,
    `picture: ${picture}`,
    `focus: ${focus}`,
    `errors: ${faults.join(" | ") || "none"}`,
    `on it:\n${said.replace(/^ *- '?option .*\n/gm, "").slice(0, MOST_TEXT)}`,
  ].join("\n");
}
