import { describe, expect, it } from "vitest";
import { goTo, openApp, openEverything, pictureOf, ready, runOf, secondOf } from "../support/appPage.ts";
import { findingsInBothThemes } from "../support/axe.ts";
import { numbersWithoutWhy } from "../support/whys.ts";

describe("a routine's weak spots", () => {
  it("are found, read off the map, and watched", async () => {
    const page = await openApp({ viewport: { width: 1300, height: 850 } });
    await goTo(page, "Weak spots");
    await page.getByRole("region", { name: "Losses" }).waitFor({ state: "attached" });
    await page.getByText("Layouts it finds hardest").waitFor();
    await openEverything(page);
    expect(await findingsInBothThemes(page)).toEqual([]);
    expect(await numbersWithoutWhy(page)).toEqual([]);
    const reader = page.getByRole("button", { name: /^Read the map/ });
    await reader.press("ArrowRight");
    await page.getByText(/mm up: \d+(\.\d)? of 100 balls that start here get home \(likely/).waitFor();
    await page.getByLabel("What the pusher touches without drift").check();
    await reader.press("ArrowRight");
    await page.getByText(/mm up: (touched|blind)/).waitFor();
    await page.getByLabel("How long pushing a ball home takes, and dead pockets").check();
    await reader.press("ArrowRight");
    await page.getByText(/mm up: \d+\.\d s to push a ball home/).waitFor();
    await page
      .getByRole("region", { name: "Losses" })
      .getByRole("button", { name: "Watch one" })
      .first()
      .click();
    await page.getByRole("heading", { name: "This run fails" }).waitFor();
  });
});

describe("watching", () => {
  it("shows many runs at once, and lays balls where they are dragged", async () => {
    const page = await openApp({ viewport: { width: 1300, height: 850 } });
    await goTo(page, "Watch");
    await page.getByLabel("Runs seen at once").selectOption("25");
    await page.getByText(/^25 faint runs; \d+ of them bring every ball home/).waitFor();
    const ball = page.getByRole("button", { name: /^Ball 2, / });
    const before = await ball.getAttribute("aria-label");
    await ball.press("ArrowUp");
    await page.getByText("The balls were laid by hand.").waitFor();
    await expect.poll(() => ball.getAttribute("aria-label")).not.toBe(before);
    await page.getByRole("button", { name: "Lay them by the rule again" }).click();
    await expect.poll(() => ball.getAttribute("aria-label")).toBe(before);
    await page.getByRole("button", { name: "Show me one that failed" }).click();
    // The run before may have failed as well.
    await ready(page);
    expect(await runOf(page)).toBeGreaterThan(0);
    await page.getByRole("heading", { name: "This run fails" }).waitFor();
    await page.getByRole("slider", { name: "Time in the run" }).fill("0.2");
    await expect.poll(() => pictureOf(page)).toContain("0.2 s.");
    const picture = await pictureOf(page);
    await page.getByRole("button", { name: "Next move" }).click();
    await expect.poll(() => secondOf(page)).toBeGreaterThan(0.2);
    await expect.poll(() => pictureOf(page)).not.toBe(picture);
  });
});
