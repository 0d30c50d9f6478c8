import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";
import { top } from "./sourceCheck.ts";

const AXE = readFileSync(join(top, "node_modules/axe-core/axe.min.js"), "utf8");

const CONTRAST = "color-contrast";

/** Everything axe finds on a page, as "rule: element". */
export function findings(page: Page): Promise<string[]> {
  return found(page, {});
}

/** The same but for the contrast of colours, which alone takes as long as all other rules. */
export function findingsBesidesContrast(page: Page): Promise<string[]> {
  return found(page, { rules: { [CONTRAST]: { enabled: false } } });
}

async function found(page: Page, options: RunOptions): Promise<string[]> {
  // Once a page: reading the program takes a good part of a run's time. Evaluated, not added as a script: the page's
  // security policy would refuse that, and shall.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  return page.evaluate(async (chosen) => {
    const { axe } = globalThis as unknown as { axe: { run(options: RunOptions): Promise<AxeResults> } };
    const { violations } = await axe.run(chosen);
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
  }, options);
}

/**
 * Everything axe finds on a page in both themes. Of its rules only the contrast of colours can tell them apart, so that one
 * is tried in each.
 */
export async function findingsInBothThemes(page: Page): Promise<string[]> {
  await page.emulateMedia({ colorScheme: "light" });
  const light = await findings(page);
  await page.emulateMedia({ colorScheme: "dark" });
  await page.waitForFunction(() => getComputedStyle(document.body).backgroundColor === "rgb(21, 25, 30)");
  const dark = await found(page, { runOnly: [CONTRAST] });
  return [...light, ...dark.map((each) => `dark: ${each}`)];
}
