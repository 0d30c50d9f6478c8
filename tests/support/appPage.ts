import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { linkHash } from "../../src/app/project/link.ts";
import { SEED } from "../../src/app/state/seed.ts";
import type { StepId } from "../../src/app/steps.ts";
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

/** The app as a first visit finds it with the first rows of its ranking, the best so far chosen; the ranking is stopped there. */
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
  await page.locator("button[aria-current=true]").waitFor();
  await stopRanking(page, ranked);
  await ready(page);
  return page;
}

/**
 * Stops the ranking as soon as it has so many rows, in the page itself: a test that is held up would come too late, and
 * find that it has ended. What follows from the last rows has followed.
 */
export async function stopRanking(page: Page, rows = 0): Promise<void> {
  await page.waitForFunction((rowCount) => {
    const panel = document.querySelector("section[aria-labelledby=ranking]");
    if (!panel || panel.querySelectorAll("ol > li").length < rowCount) return false;
    const cancel = [...panel.querySelectorAll("button")].find(({ textContent }) => textContent === "Cancel");
    cancel?.click();
    return cancel !== undefined;
  }, rows);
  // The best is followed in a task of its own.
  await page.evaluate(() => new Promise((resolve) => setTimeout(() => setTimeout(resolve))));
}

/** The app as soon as a project lies open, at one of its steps; nothing is ranked. */
export async function openStep(step: StepName, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await openPage("", options);
  await stopRanking(page);
  await goTo(page, step);
  return page;
}

export type StepName = "Zone" | "Robot" | "Routines" | "Watch" | "Weak spots" | "Practice" | "Jury";

const STEP_IDS: Readonly<Record<StepName, StepId>> = {
  Zone: "zone",
  Robot: "robot",
  Routines: "routines",
  Watch: "watch",
  "Weak spots": "weak",
  Practice: "practice",
  Jury: "jury",
};

/** Opens one of the steps of the job, and waits until it is there: it is fetched when it is first opened. */
export async function goTo(page: Page, step: StepName): Promise<void> {
  await page
    .getByRole("navigation", { name: "Steps of the job" })
    .getByRole("button", { name: step })
    .click();
  const content = page.locator(`#step[aria-labelledby=step-${STEP_IDS[step]}] .content > *`);
  await content.first().waitFor({ state: "attached" });
}

/** The app, opened as `openApp` does, at the step where runs are watched. */
export async function openWatch(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await openApp(options);
  await goTo(page, "Watch");
  return page;
}

/** Waits until a routine is chosen and the run asked for is on show and can be played. */
export async function ready(page: Page): Promise<void> {
  await page.getByText(/^Routine \d+ of \d+:/).waitFor();
  await page.locator("section.bar[aria-busy=false]").waitFor();
  await page.getByRole("button", { name: "Play", exact: true }).waitFor();
  await page.waitForFunction(() => !document.querySelector<HTMLInputElement>("input[type=range]")?.disabled);
}

/** Takes hold of something by its middle once it stands still and nothing lies over it; where that is on the page. */
export async function grab(page: Page, what: Locator): Promise<{ readonly x: number; readonly y: number }> {
  await what.hover();
  const box = await what.boundingBox();
  if (!box) throw new Error("nothing to take hold of");
  await page.mouse.down();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
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

/** Unfolds all that a step keeps folded up; of what stands in it, some is fetched only then. */
export async function openEverything(page: Page): Promise<void> {
  await page.keyboard.press("End");
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
  await page.locator("footer table").waitFor();
  if ((await page.getByText("Compare it with another").count()) > 0) {
    await page.getByRole("region", { name: "Compare it" }).waitFor();
  }
}
