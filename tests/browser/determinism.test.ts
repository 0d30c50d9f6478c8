import { type Browser, launch } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserPath } from "../support/browsers.ts";
import { baseUrl, openPage } from "../support/page.ts";
import {
  answersOfNode,
  askInPage,
  builtWorker,
  fieldNames,
  loadField,
  requestsFor,
  someRoutines,
} from "../support/workerInPage.ts";

// Any text of the same server will do as the page: the worker runs without the rest of the application.

describe("Chromium and Node", () => {
  it.each(fieldNames)("run the same trials, bit for bit: %s", async (name) => {
    const project = loadField(name);
    const routines = someRoutines(project, 6);
    const worker = builtWorker();
    const page = await openPage(worker);
    const answers = await page.evaluate(askInPage, { worker, requests: requestsFor(project, routines) });
    expect(answers).toEqual(answersOfNode(project, routines));
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
    const project = loadField(name);
    const routines = someRoutines(project, 4);
    const worker = builtWorker();
    const page = await firefox.newPage();
    await page.goto(baseUrl + worker);
    const answers = await page.evaluate(askInPage, { worker, requests: [...requestsFor(project, routines)] });
    await page.close();
    expect(answers).toEqual(answersOfNode(project, routines));
  });
});
