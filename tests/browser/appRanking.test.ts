import { describe, expect, it } from "vitest";
import { goTo, openApp, openRanked, pictureOf, ready, stopRanking } from "../support/appPage.ts";
import { openPage } from "../support/page.ts";
import { numbersWithoutWhy } from "../support/whys.ts";

const RATE = /\d+(\.\d)? of 100 runs \(likely between \d+ and \d+\)/;

describe("the ranking", () => {
  it("appears by itself, best first, with rate and range in words", async () => {
    const page = await openRanked();
    const rows = page.getByRole("region", { name: "Routines, best first" }).getByRole("listitem");
    const texts = (await rows.allInnerTexts()).map((text) => text.replace(/\s+/g, " "));
    expect(texts.length).toBeGreaterThanOrEqual(5);
    const tested = texts.filter((text) => RATE.test(text));
    expect(tested.length).toBe(texts.length);
    const rates = tested.map((text) => Number(/([\d.]+) of 100 runs/.exec(text)?.[1]));
    expect([...rates].sort((a, b) => b - a)).toEqual(rates);
    expect(await rows.first().locator(".thumb path").getAttribute("d")).toMatch(/^M[\d.]+,[\d.]+L/);
  });

  it("lets another routine be chosen: drawing, numbers and moves follow", async () => {
    const page = await openRanked();
    const before = await pictureOf(page);
    const title = page.locator("#routine");
    const first = (await title.textContent()) ?? "";
    const rows = page.getByRole("region", { name: "Routines, best first" }).getByRole("listitem");
    const other = rows.getByRole("button").filter({ hasNotText: first }).first();
    await other.click();
    await expect.poll(() => title.textContent()).not.toBe(first);
    await page.getByText(/^The \d+ moves$/).click();
    await expect.poll(() => page.locator(".sheet ol li").count()).toBeGreaterThan(2);
    await ready(page);
    await page.getByRole("button", { name: "Next move" }).click();
    await expect.poll(() => pictureOf(page)).not.toBe(before);
  });

  it("can be cancelled and taken up again, and the page stays usable meanwhile", async () => {
    const page = await openPage();
    await stopRanking(page);
    await page.getByText("Stopped. What is known so far is shown.").waitFor();
    await expect.poll(() => page.getByRole("progressbar").count()).toBe(0);
    await page.getByRole("button", { name: "Go on" }).click();
    await page.getByRole("progressbar").first().waitFor();
    await page.getByRole("button", { name: "Keys" }).click();
    await page.getByRole("heading", { name: "Keys" }).waitFor();
    await page.getByRole("button", { name: "Close" }).click();
    await ready(page);
  });

  it("can be paused, and goes on where it stood", async () => {
    const page = await openPage();
    const list = page.getByRole("region", { name: "Routines, best first" });
    await list.getByRole("listitem").first().waitFor();
    await list.getByRole("button", { name: "Pause" }).click();
    await list.getByText(/, paused$/).waitFor();
    await expect.poll(() => list.getByRole("progressbar").count()).toBe(1);
    await list.getByRole("button", { name: "Go on" }).click();
    await list.getByRole("button", { name: "Pause" }).waitFor();
    await stopRanking(page);
    expect(await list.getByRole("listitem").count()).toBeGreaterThan(0);
  });

  it("shows what less time and fewer moves cost, and opens a routine from there", async () => {
    const page = await openPage();
    const card = page.getByRole("region", { name: "Quicker or simpler" });
    // Once all routines have had their first look.
    await card.getByRole("img", { name: "What less time costs" }).waitFor();
    await stopRanking(page);
    const points = card.getByRole("button", { name: /^Open the routine: \d+ moves, / });
    await expect.poll(() => points.count()).toBeGreaterThan(1);
    const title = page.locator("#routine");
    const before = await title.textContent();
    await points.first().focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => title.textContent()).not.toBe(before);
  });

  it("goes by another aim when one is chosen", async () => {
    const page = await openApp();
    const list = page.getByRole("region", { name: "Routines, best first" });
    await list.getByRole("combobox", { name: "Best is" }).selectOption("most points");
    await list
      .getByText(/^\d\.\d of \d points$/)
      .first()
      .waitFor();
    await list.getByRole("combobox", { name: "Best is" }).selectOption("most balls home by a second");
    await list.getByRole("spinbutton", { name: "second" }).fill("40");
    await list.getByRole("spinbutton", { name: "second" }).press("Enter");
    await list
      .getByText(/of 100 balls by 40 s$/)
      .first()
      .waitFor();
    await stopRanking(page);
  });

  it("compares two routines, and two robots, on the same runs", async () => {
    const page = await openRanked();
    await page.getByText("Compare it with another").click();
    const part = page.getByRole("region", { name: "Compare it" });
    const choice = part.getByRole("combobox", { name: "With" });
    await choice.locator("option[value^='routine ']").first().waitFor({ state: "attached" });
    await choice.selectOption({ index: 1 });
    await part.getByRole("button", { name: "Compare", exact: true }).click();
    await part.getByText(/^In 1000 runs of each every ball came home: in both \d+ times/).waitFor();
    await part.getByText(/equal ones would differ this much in .* of 100 such comparisons/).waitFor();
    expect(await numbersWithoutWhy(page)).toEqual([]);
    await goTo(page, "Robot");
    await page.getByRole("textbox", { name: "Arms, length" }).fill("60");
    await goTo(page, "Routines");
    await ready(page);
    await page.getByText("Compare it with another").click();
    await choice.selectOption({ label: "This project before its last change" });
    await part.getByRole("button", { name: "Compare", exact: true }).click();
    await part.getByText(/^This one less the other: [−+±]/).waitFor();
    await part.getByText(/^In 1000 runs of each/).waitFor();
  });

  it("starts anew for another field", async () => {
    const page = await openApp();
    await page.getByRole("button", { name: /^Projects/ }).click();
    await page.getByRole("button", { name: "Plate robot" }).click();
    await page.getByRole("heading", { level: 2, name: /plate/i }).waitFor();
    await ready(page);
    expect(await page.getByRole("img").first().getAttribute("aria-label")).toContain("Wedge in the");
  });
});
