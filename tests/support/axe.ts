import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { top } from "./sourceCheck.ts";

const AXE = readFileSync(join(top, "node_modules/axe-core/axe.min.js"), "utf8");

/** Everything axe finds on a page, as "rule: element". */
export async function findings(page: Page): Promise<string[]> {
  // Evaluated, not added as a script: the page's security policy would refuse that, and shall.
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(): Promise<AxeResults> } };
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
  });
}
