import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { appBundle } from "../../src/cli/build.mjs";
import { serve } from "../../src/cli/serve.ts";
import { browserPath } from "./browsers.ts";

/** Not the tests' business: updates, synchronisation, first-run pages. No sandbox, because CI runs as root. */
const ARGS = [
  "--no-sandbox",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Global set-up of the browser tests: the built page, served as `npm start` serves it, and one Chromium for all files. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const executablePath = browserPath("chromium");
  const site = await serve(await appBundle(), 0);
  const browser = await chromium.launchServer({ executablePath, args: ARGS });
  project.provide("baseUrl", site.address);
  project.provide("chromiumEndpoint", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await site.close();
  };
}

declare module "vitest" {
  export interface ProvidedContext {
    /** Address of the built page, with a slash at its end. */
    readonly baseUrl: string;
    readonly chromiumEndpoint: string;
  }
}
