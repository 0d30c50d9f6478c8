import { expect, it } from "vitest";
import { openStep } from "../support/appPage.ts";
import { findings } from "../support/axe.ts";

it("speaks German when it is asked to, after a reload too, and leaves the zone as it was typed", async () => {
  const page = await openStep("Zone");
  const width = page.getByLabel("From left to right, inside", { exact: true });
  await width.fill("1.4 m");
  await width.press("Enter");
  await page.getByRole("img", { name: /Zone 1400 mm wide/ }).waitFor();
  await page.getByLabel("Language · Sprache").selectOption("de");
  const steps = page.getByRole("navigation", { name: "Schritte der Arbeit" });
  for (const title of ["Zone", "Roboter", "Routinen", "Ansehen", "Schwächen", "Üben", "Jury"]) {
    await steps.getByRole("button", { name: title }).waitFor();
  }
  expect(await page.locator("html").getAttribute("lang")).toBe("de");
  await steps.getByRole("button", { name: "Routinen" }).click();
  await page
    .getByText(/ von 100/)
    .first()
    .waitFor();
  expect(await findings(page)).toEqual([]);
  await page.reload();
  await steps.getByRole("button", { name: "Zone" }).click();
  await page.getByRole("img", { name: /Zone 1400 mm breit/ }).waitFor();
  await page.getByLabel("Language · Sprache").selectOption("en");
  await page.getByRole("navigation", { name: "Steps of the job" }).waitFor();
});
