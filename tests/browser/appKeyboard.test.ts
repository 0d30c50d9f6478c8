import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import {
  goTo,
  moveOf,
  openApp,
  openRanked,
  openWatch,
  pictureOf,
  ready,
  runOf,
  secondOf,
} from "../support/appPage.ts";

const focusName = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    return at?.getAttribute("aria-label") ?? at?.textContent?.trim() ?? "";
  });

describe("the keyboard", () => {
  it("plays, scrubs and steps without the mouse", async () => {
    const page = await openApp();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => secondOf(page)).toBe(2);
    await page.keyboard.press("Shift+ArrowLeft");
    await expect.poll(() => secondOf(page)).toBeCloseTo(1.9, 9);
    const move = await moveOf(page);
    await page.keyboard.press(".");
    await expect.poll(() => moveOf(page)).toBe(move + 1);
    await page.keyboard.press(",");
    await expect.poll(() => moveOf(page)).toBe(move);
    await page.keyboard.press(" ");
    await page.getByRole("button", { name: "Pause" }).waitFor();
    await page.keyboard.press(" ");
    await page.getByRole("button", { name: "Play", exact: true }).waitFor();
    await page.keyboard.press("+");
    await expect.poll(() => page.getByLabel("Speed", { exact: true }).inputValue()).toBe("2");
  });

  it("goes through placements and finds a failed run", async () => {
    const page = await openWatch();
    await page.keyboard.press("n");
    await expect.poll(() => runOf(page)).toBe(1);
    await page.keyboard.press("p");
    await expect.poll(() => runOf(page)).toBe(0);
    await ready(page);
    await page.keyboard.press("f");
    await ready(page);
    expect(await runOf(page)).toBeGreaterThan(0);
    await page.getByRole("heading", { name: "This run fails" }).waitFor();
  });

  it("chooses a routine by its rank", async () => {
    const page = await openRanked();
    await page.keyboard.press("3");
    await page.getByText("Routine ranked 3 of").waitFor();
  });

  it("reaches the play button by Tab and presses it with Space once", async () => {
    const page = await openApp();
    for (let i = 0; i < 20 && !(await focusName(page)).includes("Play"); i++)
      await page.keyboard.press("Tab");
    expect(await focusName(page)).toContain("Play");
    await page.keyboard.press(" ");
    await page.getByRole("button", { name: "Pause" }).waitFor();
  });

  it("leaves typing in a field alone", async () => {
    const page = await openRanked();
    await page.keyboard.press("2");
    const title = await page.getByText(/^Routine 2 of/).textContent();
    await goTo(page, "Watch");
    const run = page.getByRole("spinbutton", { name: "Run" });
    await run.fill("");
    await run.pressSequentially("3");
    expect(await page.getByText(/^Routine \d+ of/).textContent()).toBe(title);
    const before = await pictureOf(page);
    await run.press("Enter");
    // Another placement, at its beginning.
    await expect.poll(() => pictureOf(page)).not.toBe(before);
    expect(await pictureOf(page)).toContain("0.0 s.");
    expect(await runOf(page)).toBe(3);
  });

  it("lists its keys under ?, and can be switched off there", async () => {
    const page = await openApp();
    await page.keyboard.press("?");
    const dialog = page.getByRole("dialog", { name: "Keys" });
    await dialog.waitFor();
    await expect.poll(() => dialog.getByRole("row").count()).toBeGreaterThan(10);
    await dialog.getByLabel("Use these keys").uncheck();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    await page.keyboard.press("ArrowRight");
    // What is pressed later is done later.
    await page.keyboard.press("?");
    await dialog.waitFor();
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    expect(await secondOf(page)).toBe(0);
  });
});
