import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, expect, inject } from "vitest";
import { lookOf } from "./pageLook.ts";

/** What browser tests share. Import it, and pages close themselves after each test, the connection after each file. */

/** Address of the built page, with a slash at its end. */
export const baseUrl = inject("baseUrl");

/** Until what is waited for holds, ms: less than a test may take, so that it fails with what it waited for. */
const PATIENCE_MS = 180_000;

let connection: Promise<Browser> | null = null;
const opened: { readonly page: Page; readonly faults: string[] }[] = [];

/**
 * Opens a page of its own (no storage shared with others) at a path below the base URL. A test in whose course the page
 * throws, or writes an error to its console, fails. Nothing is kept for a visit without network unless the options allow
 * service workers: fetching everything twice takes its time.
 *
 * @param before runs in the page ahead of its own scripts
 */
export async function openPage(
  path = "",
  options: BrowserContextOptions = {},
  before?: () => void,
): Promise<Page> {
  connection ??= chromium.connect(inject("chromiumEndpoint"));
  const context = await (await connection).newContext({ serviceWorkers: "block", ...options });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", (fault) => faults.push(String(fault)));
  page.on("console", (message) => {
    // A document without an icon of its own makes the browser ask for this one.
    const isIcon = message.location().url.endsWith("/favicon.ico");
    if (message.type() === "error" && !isIcon) faults.push(message.text());
  });
  opened.push({ page, faults });
  if (before) await page.addInitScript(before);
  await page.goto(baseUrl + path);
  return page;
}

afterEach(async ({ task }) => {
  const done = opened.splice(0);
  if (task.result?.state === "fail") {
    for (const { page, faults } of done) console.log(await lookOf(page, task.name, faults));
  }
  for (const { page } of done) await page.context().close();
  expect(done.flatMap(({ faults }) => faults)).toEqual([]);
});

afterAll(async () => {
  await (await connection)?.close();
  connection = null;
});
