import { describe, expect, it } from "vitest";
import { openApp } from "../support/appPage.ts";

describe("a routine changed by hand", () => {
  it("is scored on the same placements, undone, kept as a variant and found again after a reload", async () => {
    const page = await openApp({ viewport: { width: 1400, height: 900 } });
    await page.getByRole("button", { name: "Change it by hand" }).click();
    await page.getByRole("heading", { name: "Your own" }).waitFor();
    await page.getByLabel("Its name").fill("Our first");
    const moves = page.locator(".own ol li");
    await moves.first().waitFor();
    const count = await moves.count();
    const first = moves.filter({ hasText: /drive \d{3,} mm/ }).first();
    await first.getByRole("button").first().click();
    await page.getByLabel("Way (backward: −)").fill("5 cm");
    await expect.poll(() => page.getByRole("button", { name: /drive 50 mm/ }).count()).toBeGreaterThan(0);
    await page.getByText(/Against the routine it came from: [+−±]\d+ of 100 \(likely /).waitFor();
    await page.getByRole("button", { name: "Double", exact: true }).click();
    await expect.poll(() => moves.count()).toBe(count + 1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => moves.count()).toBe(count);
    // An end of the open move is dragged, by keyboard.
    const grip = page.getByRole("button", { name: /^End of move/ }).first();
    const before = await grip.getAttribute("aria-label");
    // One of the two is not square to its way, whatever that is.
    await grip.press("ArrowDown");
    await grip.press("ArrowLeft");
    await expect.poll(() => grip.getAttribute("aria-label")).not.toBe(before);
    await page.getByRole("button", { name: "Keep it and go on with a variant" }).click();
    await expect
      .poll(() => page.getByRole("region", { name: "Your own" }).getByRole("listitem").count())
      .toBe(2);
    await page.getByText("✓ kept in this browser").waitFor();
    await page.reload();
    await page
      .getByRole("region", { name: "Your own" })
      .getByRole("button", { name: /Our first/ })
      .first()
      .click();
    await page.getByText("A routine of your own").waitFor();
  });
});
