import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { top } from "./sourceCheck.ts";

const AXE = readFileSync(join(top, "node_modules/axe-core/axe.min.js"), "utf8");

/**
 * Everything axe finds on a page, as "rule: element".
 *
 * @param rules those to try; all of them unless said otherwise
 */
export async function findings(page: Page, rules?: readonly string[]): Promise<string[]> {
  // Evaluated, not added as a script: the page's security policy would refuse that, and shall.
  await page.evaluate(AXE);
  return page.evaluate(async (runOnly) => {
    const { axe } = globalThis as unknown as { axe: { run(options: object): Promise<AxeResults> } };
    const { violations } = await axe.run(runOnly ? { runOnly } : {});
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
  }, rules);
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
  const dark = await findings(page, ["color-contrast"]);
  return [...light, ...dark.map((each) => `dark: ${each}`)];
}
