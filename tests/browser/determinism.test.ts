import { type Browser, launch } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserPath } from "../support/browsers.ts";
import { baseUrl, openPage } from "../support/page.ts";
import {
  askedOf,
  askedOfGolden,
  askInPage,
  builtWorker,
  fieldNames,
  hashesOf,
} from "../support/workerInPage.ts";

// Any text of the same server will do as the page: the worker runs without the rest of the application.

describe("Chromium and Node", () => {
  it.each(fieldNames)("run the same trials, bit for bit: %s", async (name) => {
    const { requests, answers } = askedOf(name, 4);
    const worker = builtWorker();
    const page = await openPage(worker);
    expect(await page.evaluate(askInPage, { worker, requests })).toEqual(answers);
  });

  it("come to the trajectory hashes of the one golden file", async () => {
    const { requests, hashes } = askedOfGolden();
    const worker = builtWorker();
    const page = await openPage(worker);
    expect(hashesOf(await page.evaluate(askInPage, { worker, requests }))).toEqual(hashes);
  });
});

describe("Firefox and Node", () => {
  let firefox: Browser;

  beforeAll(async () => {
    firefox = await launch({ browser: "firefox", executablePath: browserPath("firefox"), headless: true });
  }, 300_000);

  afterAll(async () => {
    await firefox?.close();
  });

  it.each(fieldNames)("run the same trials, bit for bit: %s", async (name) => {
    const { requests, answers } = askedOf(name, 2);
    const worker = builtWorker();
    const page = await firefox.newPage();
    await page.goto(baseUrl + worker);
    const told = await page.evaluate(askInPage, { worker, requests: [...requests] });
    await page.close();
    expect(told).toEqual(answers);
  });

  it("come to the trajectory hashes of the one golden file", async () => {
    const { requests, hashes } = askedOfGolden();
    const worker = builtWorker();
    const page = await firefox.newPage();
    await page.goto(baseUrl + worker);
    const told = await page.evaluate(askInPage, { worker, requests: [...requests] });
    await page.close();
    expect(hashesOf(told)).toEqual(hashes);
  });
});
