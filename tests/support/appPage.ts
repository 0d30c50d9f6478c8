import type { BrowserContextOptions, Page } from "playwright-core";
import { linkHash } from "../../src/app/project/link.ts";
import { SEED } from "../../src/app/state/seed.ts";
import { openPage } from "./page.ts";
import { shippedText } from "./projectFiles.ts";

/** A routine of the usual zone that the links of the tests choose. */
const ROUTINE = "herd-all-c0-q-b-v60";

/** The address, below the base URL, of a run of the usual zone: what a team gets that copies a link to it. */
export function linkToRun(run = 0): Promise<string> {
  return linkHash(shippedText("usual-zone.json"), { routine: ROUTINE, seed: SEED, run, timeS: 0 });
}

/**
 * The app, opened by a link: its routine is chosen and the run loaded. The ranking is stopped before its first round, so
 * that the machine is free for the test.
 */
export async function openApp(options: BrowserContextOptions = {}, before?: () => void): Promise<Page> {
  return openChosen(await linkToRun(), options, before);
}

/** The app as a first visit finds it after the first look at all routines, the best one chosen; the ranking is stopped there. */
export function openRanked(options: BrowserContextOptions = {}): Promise<Page> {
  return openChosen("", options, undefined, 5);
}

/** @param ranked rows of the ranking to wait for */
async function openChosen(
  path: string,
  options: BrowserContextOptions,
  before?: () => void,
  ranked = 1,
): Promise<Page> {
  const page = await openPage(path, options, before);
  await page.locator("button[aria-current=true]").waitFor({ timeout: 60_000 });
  const rows = page.getByRole("region", { name: "Routines, best first" }).getByRole("listitem");
  await rows.nth(ranked - 1).waitFor({ timeout: 60_000 });
  await page.evaluate(() => {
    for (const button of document.querySelectorAll("button")) {
      if (button.textContent === "Cancel") button.click();
    }
  });
  await ready(page);
  return page;
}

/** The app as soon as a project lies open, at one of its steps; nothing is ranked. */
export async function openStep(step: StepName, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await openPage("", options);
  await page.getByRole("button", { name: "Cancel" }).click();
  await goTo(page, step);
  return page;
}

export type StepName = "Zone" | "Robot" | "Routines" | "Watch" | "Weak spots" | "Practice" | "Jury";

/** Opens one of the steps of the job. */
export async function goTo(page: Page, step: StepName): Promise<void> {
  await page
    .getByRole("navigation", { name: "Steps of the job" })
    .getByRole("button", { name: step })
    .click();
}

/** The app, opened as `openApp` does, at the step where runs are watched. */
export async function openWatch(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await openApp(options);
  await goTo(page, "Watch");
  return page;
}

/** Waits until a routine is chosen and its run can be played. */
export async function ready(page: Page): Promise<void> {
  await page.getByText(/^Routine \d+ of \d+:/).waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name: "Play", exact: true }).waitFor();
  await page.waitForFunction(() => !document.querySelector<HTMLInputElement>("input[type=range]")?.disabled);
}

/** The second the run stands at. */
export async function secondOf(page: Page): Promise<number> {
  return Number(await page.getByRole("slider", { name: "Time in the run" }).inputValue());
}

/** Number of the run on show. */
export async function runOf(page: Page): Promise<number> {
  return Number(await page.getByRole("spinbutton", { name: "Run" }).inputValue());
}

/** Where everything is, in words: the text twin of the drawing. */
export async function pictureOf(page: Page): Promise<string> {
  return (await page.locator(".drawing .picture").textContent()) ?? "";
}

/** Number of the move under way, as the text twin gives it. */
export async function moveOf(page: Page): Promise<number> {
  return Number(/Move (\d+) of/.exec(await pictureOf(page))?.[1]);
}

/** Unfolds all that a step keeps folded up. */
export async function openEverything(page: Page): Promise<void> {
  await page.keyboard.press("End");
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
}
