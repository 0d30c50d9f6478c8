/**
 * How long the page's main thread is busy at a stretch: `node tests/bench/page.mjs`; `--slower=4` on a main thread four
 * times as slow (workers stay as fast as they are), `--only=race,drags` some scenes only. Needs Chromium.
 *
 * A task over 50 ms is a long one (W3C, Long Tasks API): who types or points just then notices. The browser's own observer
 * counts in time of the wall; its trace says what a task cost the processor, which is what counts on a machine that does
 * other things as well.
 */
import { chromium } from "playwright-core";
import { preview } from "vite";
import { appBundle, top } from "../../src/cli/build.mjs";

const LONG_MS = 50;
/** Tasks named for each scene. */
const NAMED = 8;

/** @param {string} name @param {string} fallback */
function flag(name, fallback) {
  const found = process.argv.find((word) => word.startsWith(`--${name}=`));
  return found ? found.slice(name.length + 3) : fallback;
}

const slower = Number(flag("slower", "1"));
const only = flag("only", "").split(",").filter(Boolean);

/** @typedef {import("playwright-core").Page} Page */

/** @param {Page} page @param {string} name */
const step = (page, name) =>
  page.getByRole("navigation", { name: "Steps of the job" }).getByRole("button", { name }).click();

/** @param {Page} page @param {string | RegExp} name */
async function drag(page, name) {
  const box = await page.getByRole("button", { name }).first().boundingBox();
  if (!box) throw new Error(`nothing to drag is called ${name}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 90; i++) {
    await page.mouse.move(x - 40 * Math.sin(i / 12), y + 40 * Math.sin(i / 9));
    await page.waitForTimeout(16);
  }
  await page.mouse.up();
}

/** Every scene begins where the one before it ended. @type {Readonly<Record<string, (page: Page, address: string) => Promise<void>>>} */
const SCENES = {
  async load(page, address) {
    await page.goto(address);
    await page.locator("button[aria-current=true]").waitFor();
  },
  async race(page) {
    await page.waitForTimeout(12_000);
  },
  async watch(page) {
    await step(page, "Watch");
    await page.getByRole("button", { name: "Play", exact: true }).click();
    await page.waitForTimeout(3000);
    await page.keyboard.press("n");
    await page.waitForTimeout(1500);
  },
  async weak(page) {
    await step(page, "Weak spots");
    await page.getByText("Balls lost, by reason and move").waitFor({ timeout: 120_000 });
    for (const name of [/whatever the drift/, /without drift$/, /dead pockets/, /gets home/]) {
      await page.getByRole("radio", { name }).check();
      await page.waitForTimeout(400);
    }
  },
  async drags(page) {
    await step(page, "Zone");
    await drag(page, /^Far wall|wall/i);
    await drag(page, /^Wedge/i);
    await page.waitForTimeout(1500);
  },
  async ghosts(page) {
    await step(page, "Watch");
    await page
      .locator("button[aria-current=true]")
      .waitFor({ state: "attached", timeout: 60_000 })
      .catch(() => {});
    const cancel = page.getByRole("button", { name: "Cancel" });
    if (await cancel.isVisible()) await cancel.click();
    await page.getByLabel("Runs seen at once").selectOption("200");
    await page.getByText(/^200 faint runs/).waitFor({ timeout: 60_000 });
    await page.getByRole("button", { name: /^Play/ }).click();
    await page.waitForTimeout(6000);
  },
};

/** The browser's own count of long tasks, in the page. */
function observe() {
  const tasks = /** @type {number[]} */ ([]);
  Object.assign(globalThis, { longTasks: tasks });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks.push(duration);
  }).observe({ type: "longtask", buffered: true });
}

/**
 * @typedef {{ name: string, ph: string, pid: number, tid: number, ts: number, dur?: number, tdur?: number, args: any }} TraceEvent
 * @param {Buffer} trace
 */
function tasksOf(trace) {
  /** @type {{ traceEvents: TraceEvent[] }} */
  const { traceEvents } = JSON.parse(trace.toString());
  const mains = new Set(
    traceEvents
      .filter(({ name, args }) => name === "thread_name" && args.name === "CrRendererMain")
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const here = traceEvents.filter(({ ph, pid, tid }) => ph === "X" && mains.has(`${pid} ${tid}`));
  const tasks = here.filter(({ name }) => name === "ThreadControllerImpl::RunTask" || name === "RunTask");
  const busyMs = tasks.reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);
  const frames = here.filter(({ name }) => name === "FireAnimationFrame");
  const long = tasks
    .filter(({ dur = 0 }) => dur >= 1000 * LONG_MS)
    .map((task) => ({
      wallMs: (task.dur ?? 0) / 1000,
      cpuMs: (task.tdur ?? 0) / 1000,
      parts: partsOf(here, task),
    }));
  return { busyMs, long, frameMs: frames.map(({ tdur = 0 }) => tdur / 1000) };
}

/** What a task spent its time on: the outermost named pieces of 3 ms and more. @param {readonly TraceEvent[]} events @param {TraceEvent} task */
function partsOf(events, task) {
  const end = task.ts + (task.dur ?? 0);
  const dull = /RunTask|RunMicrotasks|ThreadController|MajorGC$|^V8\.GC_/;
  return events
    .filter(
      (each) =>
        each.tid === task.tid &&
        each.pid === task.pid &&
        each.ts >= task.ts &&
        each.ts + (each.dur ?? 0) <= end &&
        (each.tdur ?? 0) >= 3000 &&
        !dull.test(each.name),
    )
    .sort((a, b) => (b.tdur ?? 0) - (a.tdur ?? 0))
    .slice(0, 5)
    .map(({ name, tdur = 0, args }) => {
      const { url, functionName } = args?.data ?? {};
      const where = [functionName, url?.split("/").at(-1)].filter(Boolean).join(" in ");
      return `${name}${where ? ` (${where})` : ""} ${(tdur / 1000).toFixed(0)} ms`;
    });
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
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.addInitScript(observe);
  const session = await page.context().newCDPSession(page);
  if (slower > 1) await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  console.log(`main thread ${slower} times slower; ${browser.version()}`);
  const address = server.resolvedUrls?.local[0] ?? "";
  for (const [name, act] of Object.entries(SCENES)) {
    if (only.length > 0 && !only.includes(name) && name !== "load") continue;
    await browser.startTracing(page, {
      categories: ["toplevel", "devtools.timeline", "v8", "blink.user_timing"],
    });
    await act(page, address);
    const { busyMs, long, frameMs } = tasksOf(await browser.stopTracing());
    const seen = await page.evaluate(() => {
      const tasks = /** @type {{ longTasks: number[] }} */ (/** @type {unknown} */ (globalThis)).longTasks;
      return tasks.splice(0);
    });
    const heavy = long.filter(({ cpuMs }) => cpuMs >= LONG_MS);
    const mean = frameMs.reduce((sum, each) => sum + each, 0) / Math.max(1, frameMs.length);
    console.log(
      `\n${name}: ${seen.length} long tasks by the observer (longest ${Math.max(0, ...seen).toFixed(0)} ms), ${heavy.length} of ${LONG_MS} ms of processor and more; busy ${busyMs.toFixed(0)} ms in all; ${frameMs.length} frames with ${mean.toFixed(2)} ms of script on average, ${Math.max(0, ...frameMs).toFixed(1)} ms at most`,
    );
    for (const { wallMs, cpuMs, parts } of long.sort((a, b) => b.cpuMs - a.cpuMs).slice(0, NAMED)) {
      console.log(`  ${wallMs.toFixed(0)} ms, ${cpuMs.toFixed(0)} of processor: ${parts.join("; ")}`);
    }
  }
} finally {
  await browser.close();
  await server.close();
}
