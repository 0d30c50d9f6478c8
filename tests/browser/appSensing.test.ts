import { describe, it } from "vitest";
import { goTo, openStep, ready, stopRanking } from "../support/appPage.ts";

describe("a robot that senses", () => {
  it("is shown with the lines by which it decides, and the line under way", async () => {
    const page = await openStep("Zone");
    await page.getByRole("button", { name: /^Projects/ }).click();
    await page.getByRole("button", { name: "Unknown corner" }).click();
    await goTo(page, "Routines");
    await page.getByRole("button", { name: /^Show all \d+/ }).click();
    const row = page.getByRole("button", { name: /Find the corner first/ }).first();
    await row.waitFor();
    await stopRanking(page);
    await row.click();
    await ready(page);
    await page.getByText(/How it decides: \d+ lines/).click();
    await page.getByText("look around: turn").first().waitFor();
    await page.getByText("if the floor below is the wedge").first().waitFor();
    await page.locator("li[aria-current=step] .index").first().waitFor({ state: "attached" });
    await goTo(page, "Watch");
  });
});
