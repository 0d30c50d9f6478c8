import { type Browser, launch } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Request } from "../../src/jobs/protocol.ts";
import { browserPath } from "../support/browsers.ts";
import { baseUrl, openPage } from "../support/page.ts";
import { askedOfFields, askedOfGolden, askInPage, builtWorker, hashesOf } from "../support/workerInPage.ts";

// Any text of the same server will do as the page: the worker runs without the rest of the application. One page for all
// questions, because what a worker needs longest is to have its code compiled.

describe("Chromium and Node", () => {
  it("run the same trials, bit for bit, of every field, and come to the one golden file", async () => {
    const worker = builtWorker();
    const page = await openPage(worker);
    await holds(4, (requests) => page.evaluate(askInPage, { worker, requests }));
  });
});

describe("Firefox and Node", () => {
  let firefox: Browser;

  beforeAll(async () => {
    const executablePath = browserPath("firefox");
    // As long as the test may take: the defaults are half a minute to start, and three minutes for an answer.
    const patience = { timeout: 240_000, protocolTimeout: 240_000 };
    firefox = await launch({ browser: "firefox", executablePath, headless: true, ...patience });
  }, 300_000);

  afterAll(async () => {
    await firefox?.close();
  });

  it("run the same trials, bit for bit, of every field, and come to the one golden file", async () => {
    const worker = builtWorker();
    const page = await firefox.newPage();
    await page.goto(baseUrl + worker);
    await holds(2, (requests) => page.evaluate(askInPage, { worker, requests: [...requests] }));
  });
});

/** Compares what a browser's worker says with what Node says. @param count routines of each field */
async function holds(
  count: number,
  ask: (requests: readonly Request[]) => Promise<readonly unknown[]>,
): Promise<void> {
  const fields = askedOfFields(count);
  const golden = askedOfGolden();
  // Keys and ids go on where those of the fields end.
  const told = await ask([
    ...fields.requests,
    ...golden.requests.map((each) => ({ ...each, id: each.id + 1e6, key: each.key + 1e6 })),
  ]);
  const named = told
    .slice(0, fields.answers.length)
    .map((answer, i) => ({ name: fields.answers[i]?.name, answer }));
  expect(named).toEqual(fields.answers);
  expect(hashesOf(told.slice(fields.answers.length))).toEqual(golden.hashes);
}
