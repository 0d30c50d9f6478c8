import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { openStep } from "../support/appPage.ts";
import { findings } from "../support/axe.ts";
import { englishFinder } from "../support/leftovers.ts";

const english = await englishFinder();

/** All that the open step says, the facts of the project over it left out (a team names things itself): what is seen, what screen readers say, what stands in fields. */
function saidOn(page: Page): Promise<string> {
  return page.evaluate(() => {
    const step = document.querySelector("#step .content");
    if (!step) return "";
    const fields = [...step.querySelectorAll("textarea")].map(({ value }) => value);
    const named = [...step.querySelectorAll("[aria-label], [alt], [title]")].map((each) =>
      ["aria-label", "alt", "title"].map((name) => each.getAttribute(name) ?? "").join("\n"),
    );
    return [step.textContent ?? "", ...named, ...fields].join("\n").replace(/\s+/g, " ");
  });
}

async function expectGerman(page: Page, words: string): Promise<void> {
  await page.locator("#step .content").getByText(words).first().waitFor();
  expect(english(await saidOn(page))).toEqual([]);
}

/** Through every leaf of the steps Practice and Jury, with something in each. */
async function walkHandOn(page: Page, open: (step: string) => Promise<void>): Promise<void> {
  await open("Üben");
  await expectGerman(page, "Die Radgrade sind mit der wirksamen Spurweite");
  await page.getByLabel("Geschrieben als").selectOption("c");
  expect(await page.getByLabel("Das Programm").inputValue()).toContain("Schreibt diese Funktionen");
  await expectGerman(page, "Kopieren");
  await page.getByLabel("Maßband").check();
  await page.getByText("Die Tabelle, ein Versuch je Zeile").click();
  const table = page.getByLabel("Tabelle der Versuche");
  await table.fill("Geradde;1000;981,5\nRückprall;300;320");
  await expectGerman(page, "Meint ihr „Gerade“?");
  await table.fill("turn;900;871;10\nDrehung;900;869,5;10");
  await expectGerman(page, "Auf 90° Befehl dreht er 3,0° zu wenig.");
  await page.getByLabel("Übungsläufe").check();
  await page.getByLabel("Aufstellungen").fill("1");
  await page.getByRole("button", { name: "Aufstellungen vorschlagen" }).click();
  await expectGerman(page, "Lauf 1");
  await open("Jury");
  await expectGerman(page, "Ein Blatt für die Jury");
  await page.getByLabel("Entscheidungsheft").check();
  await page.getByRole("button", { name: "Aufschreiben" }).click();
  await page.getByRole("button", { name: "Nachrechnen" }).click();
  await expectGerman(page, "dieselben Zahlen.");
  await page.getByLabel("Plakat und Clip").check();
  await expectGerman(page, "Ein Plakat");
}

it("speaks German when it is asked to, after a reload too, and leaves the zone as it was typed", async () => {
  const page = await openStep("Zone");
  const width = page.getByLabel("From left to right, inside", { exact: true });
  await width.fill("1.4 m");
  await width.press("Enter");
  await page.getByRole("img", { name: /Zone 1400 mm wide/ }).waitFor();
  expect(english(await saidOn(page)).length).toBeGreaterThan(10);
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
  await walkHandOn(page, (name) => steps.getByRole("button", { name }).click());
  await page.reload();
  await steps.getByRole("button", { name: "Zone" }).click();
  await page.getByRole("img", { name: /Zone 1400 mm breit/ }).waitFor();
  await page.getByRole("button", { name: "Rechte Wand, 1400 mm von der linken" }).waitFor();
  // What is written into a project stays as it was written.
  await page.getByLabel(/^Notizen/).fill("");
  await expectGerman(page, "Wie die Bälle hingelegt werden");
  const breadth = page.getByLabel("Von links nach rechts, innen", { exact: true });
  await breadth.fill("10 cm");
  await breadth.press("Enter");
  await expectGerman(page, "Erlaubt ist eine Zahl von 200 bis 20000 mm.");
  await steps.getByRole("button", { name: "Roboter" }).click();
  await expectGerman(page, "Was daraus folgt");
  await page.getByLabel("Language · Sprache").selectOption("en");
  await page.getByRole("navigation", { name: "Steps of the job" }).waitFor();
});
