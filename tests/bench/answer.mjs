/**
 * How long after a change the first answer about the new project stands on the screen: `node tests/bench/answer.mjs`;
 * `--rounds=3` each change so often, `--only=width,corner` some changes only, `--steps=weak` some steps only;
 * `--against=DIR` the page built in another clone (its dist/app) in turn with this one. Needs Chromium.
 *
 * The clock starts with the page's own input event and ends with the first frame that shows what is waited for; whatever
 * stood there before the change does not count. In brackets the processor time of all the page's threads until then: it is
 * about what an idle machine needs at most. Least and median of the rounds stand at the end of the line.
 */
import { loadavg } from "node:os";
import { resolve } from "node:path";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { appBundle, top } from "../../src/cli/build.mjs";

/** @param {string} name @param {string} fallback */
function flag(name, fallback) {
  const found = process.argv.find((word) => word.startsWith(`--${name}=`));
  return found ? found.slice(name.length + 3) : fallback;
}

const rounds = Number(flag("rounds", "2"));
const only = flag("only", "").split(",").filter(Boolean);
const steps = flag("steps", "").split(",").filter(Boolean);
const against = flag("against", "");

/** @typedef {import("playwright-core").Page} Page */
/** @typedef {"Zone" | "Robot"} From */

/** What is changed: the field's step and name, and two values it takes in turn. @type {Readonly<Record<string, readonly [from: "Zone" | "Robot", field: string, one: string, other: string]>>} */
const CHANGES = {
  width: ["Robot", "Body, left to right", "160", "150"],
  arms: ["Robot", "Arms, length", "80", "90"],
  speed: ["Robot", "Fastest straight on", "220", "250"],
  zone: ["Zone", "From left to right, inside", "1150", "1200"],
  ball: ["Zone", "How many", "2", "3"],
  corner: ["Zone", "In which corner", "upper-left", "upper-right"],
};

/**
 * What is waited for in each step: selector and words of what did not stand there before the change. What stood there while `waits` was
 * seen counts as new, whatever it says.
 */
const ANSWERS = {
  here: {
    step: null,
    where: "section.now dl > :first-child > dd:not(.stale)",
    words: "\\d of 100 runs",
    waits: "section.now .stale",
  },
  routines: {
    step: "Routines",
    where: "section[aria-labelledby=ranking] li",
    words: "of 100 runs \\(likely",
  },
  watch: { step: "Watch", where: "section[aria-label='What happens in this run'] h3", words: "This run" },
  weak: { step: "Weak spots", where: "section[aria-label=Losses] li", words: "\\w" },
  fix: { step: "Weak spots", where: "section[aria-label='What to fix'] :is(svg text, li)", words: "\\w" },
};

/** @param {Page} page @param {string} name */
const stepButton = (page, name) =>
  page.getByRole("navigation", { name: "Steps of the job" }).getByRole("button", { name });

/** What the page is to do at once, and what is then waited for. @typedef {{ field?: unknown, value?: string, button?: unknown, where: string, words: string, waits?: string }} Deed */

/**
 * In the page: types or presses, and waits for the first frame with an answer. All of it there: what a driver of the browser does in
 * between takes longer on a busy machine than the answer. The step is opened 200 ms after the change: no hand is faster. @param {Deed} deed @returns {Promise<number>} ms
 */
function answerAt({ field, value, button, where, words, waits }) {
  const handMs = 200;
  const test = new RegExp(words);
  const marked = () => document.querySelectorAll("[data-old]");
  for (const each of document.querySelectorAll(".leaf *, .now *"))
    each.setAttribute("data-old", each.textContent ?? "");
  const startMs = performance.now();
  return new Promise((resolve) => {
    const look = () => {
      if (waits && document.querySelector(waits))
        for (const each of marked()) each.removeAttribute("data-old");
      const found = [...document.querySelectorAll(where)].some(
        (each) => each.getAttribute("data-old") !== each.textContent && test.test(each.textContent ?? ""),
      );
      if (!found) return;
      changes.disconnect();
      requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now() - startMs)));
    };
    const changes = new MutationObserver(look);
    changes.observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });
    if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement) {
      field.value = value ?? "";
      for (const kind of ["input", "change"]) field.dispatchEvent(new Event(kind, { bubbles: true }));
    }
    // A page that has not yet begun would count what it still shows of before.
    if (button instanceof HTMLElement) setTimeout(() => button.click(), field ? handMs : 0);
  });
}

/** Processor time of all pages' processes so far, ms. */
async function busyMs() {
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  return 1000 * processInfo.reduce((sum, { type, cpuTime }) => sum + (type === "renderer" ? cpuTime : 0), 0);
}

/** @param {Page} page @param {string} name @param {keyof typeof ANSWERS} answer @param {boolean} odd @returns {Promise<readonly [wallMs: number, cpuMs: number]>} */
async function measure(page, name, answer, odd) {
  const change = CHANGES[name];
  if (!change) throw new Error(`no change is called ${name}`);
  const [from, label, one, other] = change;
  const { step, ...wanted } = ANSWERS[answer];
  await stepButton(page, from).click();
  const field = await page.getByLabel(label, { exact: true }).first().elementHandle();
  const button = step ? await stepButton(page, step).elementHandle() : null;
  await page.waitForTimeout(1500);
  const deed = { field, value: odd ? one : other, button, ...wanted };
  if (answer !== "fix") return timed(page, deed);
  await timed(page, { ...deed, ...ANSWERS.weak });
  const again = page.getByRole("button", { name: /^Try (all|them)/ });
  return timed(page, { ...wanted, button: await again.elementHandle() });
}

/** @param {Page} page @param {Deed} deed @returns {Promise<readonly [wallMs: number, cpuMs: number]>} */
async function timed(page, deed) {
  const before = await busyMs();
  /** @type {Promise<number>} */
  const limit = new Promise((resolve) => setTimeout(() => resolve(Number.POSITIVE_INFINITY), 40_000));
  const wallMs = await Promise.race([page.evaluate(answerAt, deed), limit]);
  return [wallMs, (await busyMs()) - before];
}

/** Ends all work of a page, so that the next measurement has the machine for itself. @param {Page} page */
async function rest(page) {
  await page.waitForTimeout(1000);
  for (const at of [null, "Routines"]) {
    if (at) await stepButton(page, at).click();
    for (const button of await page.getByRole("button", { name: "Cancel" }).all()) await button.click();
  }
}

/** @param {string} outDir */
const serve = (outDir) =>
  preview({ configFile: false, root: top, build: { outDir }, preview: { port: 0, host: "127.0.0.1" } });

/** @param {readonly number[]} values */
const middle = (values) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** @param {readonly (readonly [wallMs: number, cpuMs: number])[]} took */
function inWords(took) {
  const each = took.map(([wall, cpu]) => `${wall.toFixed(0).padStart(6)} (${cpu.toFixed(0)})`).join("");
  const [walls, cpus] = [took.map(([wall]) => wall), took.map(([, cpu]) => cpu)];
  const least = `${Math.min(...walls).toFixed(0)} (${Math.min(...cpus).toFixed(0)})`;
  return `${each}   least ${least}, median ${middle(walls).toFixed(0)} (${middle(cpus).toFixed(0)})`;
}

const places = [["", await appBundle()], ...(against ? [["other", resolve(against)]] : [])];
const servers = await Promise.all(places.map(([, outDir = ""]) => serve(outDir)));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
const session = await browser.newBrowserCDPSession();
try {
  console.log(`${browser.version()}; ms from a change to the first answer, each round`);
  const pages = [];
  for (const server of servers) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(server.resolvedUrls?.local[0] ?? "");
    // Until then it is not known which routines are the best.
    await page.locator("#trade-offs").waitFor({ timeout: 120_000 });
    await rest(page);
    pages.push(page);
  }
  for (const answer of /** @type {(keyof typeof ANSWERS)[]} */ (Object.keys(ANSWERS))) {
    if (steps.length > 0 && !steps.includes(answer)) continue;
    for (const name of Object.keys(CHANGES)) {
      if (only.length > 0 && !only.includes(name)) continue;
      /** @type {(readonly [number, number])[][]} */
      const took = pages.map(() => []);
      for (let i = 0; i < rounds; i++) {
        for (const [at, page] of pages.entries()) {
          took[at]?.push(await measure(page, name, answer, i % 2 === 0));
          await rest(page);
        }
      }
      for (const [at, [which = ""]] of places.entries()) {
        const load = loadavg()[0]?.toFixed(1);
        console.log(
          `${answer.padEnd(9)} ${name.padEnd(7)} ${which.padEnd(6)}${inWords(took[at] ?? [])}   load ${load}`,
        );
      }
    }
  }
} finally {
  await browser.close();
  for (const server of servers) await server.close();
}
