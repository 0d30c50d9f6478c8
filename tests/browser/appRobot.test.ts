import { describe, expect, it } from "vitest";
import { goTo, openStep } from "../support/appPage.ts";
import { findings } from "../support/axe.ts";

describe("the robot's sensors", () => {
  it("are switches with numbers behind them; with an eye, routines that look are ranked", async () => {
    const page = await openStep("Robot");
    const eye = page.getByLabel("Distance ahead");
    await eye.check();
    await page.getByText("More: Distance ahead").click();
    await page.getByLabel("How it works").selectOption("ultrasonic-echo");
    const range = page.getByLabel("Farthest that it sees");
    await expect.poll(() => range.inputValue()).toBe("1500");
    await range.fill("1e9");
    await page.getByText("“1e9” is not a length").waitFor();
    await range.fill("99999999");
    await page
      .getByText(/It must be a number from 20 to 20000 mm/)
      .first()
      .waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(() => range.inputValue()).toBe("1500");
    await page.getByLabel("Gyro").check();
    await page.getByLabel("Gyro").uncheck();
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.getByLabel("Gyro").isChecked()).toBe(true);
    if (process.env.SHOTS)
      await page.screenshot({ path: `${process.env.SHOTS}/sensors.png`, fullPage: true });
    expect(await findings(page)).toEqual([]);
    await goTo(page, "Routines");
    await page.getByRole("button", { name: /^Show all \d+/ }).click();
    await page
      .getByRole("button", { name: /Look and fetch/ })
      .first()
      .waitFor();
  });
});

describe("a number", () => {
  it("says why it matters, at the press of a key", async () => {
    const page = await openStep("Robot");
    const why = page.locator("summary", { hasText: "why? Arms, length" });
    const words = page.getByText("Longer arms hold a ball better in turns");
    expect(await words.isVisible()).toBe(false);
    await why.press("Enter");
    await words.waitFor();
    // Every number of both steps has its reason beside it.
    for (const step of ["Robot", "Zone"] as const) {
      await goTo(page, step);
      await page.locator("fieldset").first().waitFor();
      const without = await page
        .locator(".field:has(input[inputmode=decimal]):not(:has(summary))")
        .evaluateAll((fields) => fields.map((field) => field.textContent));
      expect(without).toEqual([]);
    }
  });
});

it("shows arms that swing open and closed", async () => {
  const page = await openStep("Robot", { viewport: { width: 1100, height: 900 } });
  await page.getByRole("button", { name: /^Projects/ }).click();
  await page.getByRole("button", { name: "Swinging arms" }).click();
  await page.getByText(/^The robot from above.*dashed as they are when closed/).waitFor();
  await page.getByText(/With closed arms it is \d+ mm wide/).waitFor();
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/hinged.png` });
  await page.getByLabel("Closed arms, turned outward").fill("-60");
  await page.getByText("The arms meet, so that no ball can come between them").first().waitFor();
});
