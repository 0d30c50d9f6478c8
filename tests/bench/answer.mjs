/**
 * How long after a change the first answer about the new project stands on the screen: `node tests/bench/answer.mjs`;
 * `--rounds=3` each change so often, `--only=width,corner` some changes only, `--steps=weak` some steps only. Needs Chromium.
 *
 * The clock starts with the page's own input event and ends with the first frame that shows what is waited for; whatever
 * stood there before the change does not count. In brackets the processor time of all the page's threads until then: with
 * the 150 ms for which the page waits for the hand to rest, it is what an idle machine needs at most.
 */
import { loadavg } from "node:os";
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

/** @typedef {import("playwright-core").Page} Page */
/** @typedef {"Zone" | "Robot"} From */

/** What is changed, where, and between which two values. @type {Readonly<Record<string, { from: From, act: (page: Page, odd: boolean) => Promise<unknown> }>>} */
const CHANGES = {
  width: { from: "Robot", act: (page, odd) => fill(page, "Body, left to right", odd ? "160" : "150") },
  arms: { from: "Robot", act: (page, odd) => fill(page, "Arms, length", odd ? "80" : "90") },
  speed: { from: "Robot", act: (page, odd) => fill(page, "Fastest straight on", odd ? "220" : "250") },
  zone: { from: "Zone", act: (page, odd) => fill(page, "From left to right, inside", odd ? "1150" : "1200") },
  ball: { from: "Zone", act: (page, odd) => fill(page, "How many", odd ? "2" : "3") },
  corner: {
    from: "Zone",
    act: (page, odd) => page.getByLabel("In which corner").selectOption({ index: odd ? 2 : 3 }),
  },
};

/** @param {Page} page @param {string} label @param {string} value */
const fill = (page, label, value) =>
  page
    .getByRole("textbox", { name: label })
    .or(page.getByRole("spinbutton", { name: label }))
    .first()
    .fill(value);

/** What is waited for in each step: selector and words of what did not stand there before the change. */
const ANSWERS = {
  same: { step: null, where: ".guide", words: "\\d of 100 runs" },
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
const step = (page, name) =>
  page.getByRole("navigation", { name: "Steps of the job" }).getByRole("button", { name }).click();

/** In the page: notes the moment of a change, and marks what stands there. */
function watchChanges() {
  Object.assign(globalThis, { changedAt: 0 });
  addEventListener(
    "input",
    () => {
      for (const each of document.querySelectorAll(".leaf *"))
        each.setAttribute("data-old", each.textContent ?? "");
      Object.assign(globalThis, { changedAt: performance.now() });
    },
    true,
  );
}

/** In the page: waits for the first frame with an answer. @param {{ where: string, words: string }} wanted @returns {Promise<number>} ms */
function answerAt({ where, words }) {
  const { changedAt } = /** @type {{ changedAt: number }} */ (/** @type {unknown} */ (globalThis));
  const test = new RegExp(words);
  return new Promise((resolve) => {
    const look = () => {
      const found = [...document.querySelectorAll(where)].some(
        (each) => each.getAttribute("data-old") !== each.textContent && test.test(each.textContent ?? ""),
      );
      if (found) requestAnimationFrame(() => resolve(performance.now() - changedAt));
      else requestAnimationFrame(look);
    };
    look();
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
  const wanted = ANSWERS[answer];
  if (!change) throw new Error(`no change is called ${name}`);
  await step(page, change.from);
  await page.waitForTimeout(2500);
  const before = await busyMs();
  await change.act(page, odd);
  if (wanted.step) await step(page, wanted.step);
  if (answer === "fix") {
    await page.getByRole("button", { name: /^Try (all|them)/ }).click();
    await page.evaluate(() => Object.assign(globalThis, { changedAt: performance.now() }));
  }
  const limit = /** @type {Promise<number>} */ (
    new Promise((resolve) => setTimeout(() => resolve(Number.POSITIVE_INFINITY), 40_000))
  );
  const wallMs = await Promise.race([page.evaluate(answerAt, wanted), limit]);
  return [wallMs, (await busyMs()) - before];
}

const server = await preview({
  configFile: false,
  root: top,
  build: { outDir: await appBundle() },
  preview: { port: 0, host: "127.0.0.1" },
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
const session = await browser.newBrowserCDPSession();
try {
  console.log(`${browser.version()}; ms from a change to the first answer, each round`);
  for (const answer of /** @type {(keyof typeof ANSWERS)[]} */ (Object.keys(ANSWERS))) {
    if (steps.length > 0 && !steps.includes(answer)) continue;
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.addInitScript(watchChanges);
    await page.goto(server.resolvedUrls?.local[0] ?? "");
    await page.locator("button[aria-current=true]").waitFor();
    for (const name of Object.keys(CHANGES)) {
      if (only.length > 0 && !only.includes(name)) continue;
      const took = [];
      for (let i = 0; i < rounds; i++) took.push(await measure(page, name, answer, i % 2 === 0));
      const load = loadavg()[0]?.toFixed(1);
      console.log(
        `${answer.padEnd(9)} ${name.padEnd(7)} ${took.map(([wall, cpu]) => `${wall.toFixed(0).padStart(6)} (${cpu.toFixed(0)})`).join("")}   load ${load}`,
      );
    }
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
}
