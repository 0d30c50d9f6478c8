import type { Page } from "playwright-core";

/**
 * Numbers that the open step shows and whose "why?" cannot be reached. Every text with a digit in it stands in a part of the
 * step that has one; in a list of terms each term has its own. Left out: what the team typed, names, what a
 * control says, and the line that says what to do next, which repeats a number of the list.
 */
export function numbersWithoutWhy(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const step = document.querySelector("#step");
    if (!step) return ["there is no step"];
    const found: string[] = [];
    const texts = document.createTreeWalker(step, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const place = node.parentElement;
      const words = node.textContent?.trim() ?? "";
      const left =
        "header, h2, button, label, option, summary, textarea, svg, .unseen, .why, .settings, .guide";
      if (!place || !/\d/.test(words) || place.closest(left)) continue;
      const term = place.closest("dl > div");
      let part = term ?? place.closest("section, fieldset, [data-why]");
      while (!term && part && part !== step && !part.querySelector(".why")) {
        part = part.parentElement?.closest("section, fieldset, [data-why]") ?? null;
      }
      if (!part || part === step || !part.querySelector(".why")) found.push(words);
    }
    return found;
  });
}
