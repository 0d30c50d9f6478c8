/**
 * Makes the README's pictures anew, by the app itself: `node tests/pictures/make.mjs`. Needs Chromium ($CHROMIUM, or the usual place).
 */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const here = dirname(fileURLToPath(import.meta.url));
const top = join(here, "../..");
const SIZE = { width: 1160, height: 640 };

const server = spawn(process.execPath, [join(top, "src/cli/launch.mjs"), "start"], { cwd: top });
const address = await new Promise((resolve, reject) => {
  let text = "";
  server.stdout.on("data", (part) => {
    text += part;
    const found = /http:\/\/\S+/.exec(text);
    if (found) resolve(found[0]);
  });
  server.on("close", () => reject(new Error(`the page was not served: ${text}`)));
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
try {
  const page = await browser.newPage({ viewport: SIZE, colorScheme: "light" });
  await page.goto(address);
  const tour = page.getByRole("button", { name: "No tour" });
  await tour.click();
  // The worked example, as the README tells it.
  const mill = /```json\n([\s\S]*?)```/.exec(readFileSync(join(top, "README.md"), "utf8"))?.[1] ?? "";
  await page.getByRole("button", { name: /^Projects/ }).click();
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "mill.json", mimeType: "application/json", buffer: Buffer.from(mill) });
  await page.getByRole("button", { name: /^Projects, open: The old mill/, includeHidden: true }).waitFor();
  await page.keyboard.press("Escape");
  /** @param {string} name */
  const step = (name) =>
    page.getByRole("navigation", { name: "Steps of the job" }).getByRole("button", { name }).click();
  await page.getByText(/^Routine \d+ of \d+:/).waitFor({ timeout: 120_000 });
  const cancel = page.getByRole("button", { name: "Cancel" });
  // Some hundred runs of each are enough for a picture.
  await page.waitForTimeout(20_000);
  if (await cancel.isVisible()) await cancel.click();
  await page.screenshot({ path: join(here, "routines.png") });
  await step("Practice");
  await page.getByLabel("Practice runs").check();
  await page.getByRole("button", { name: "Propose placements" }).click();
  await page.getByText("Run 8").waitFor();
  await page.screenshot({ path: join(here, "practice.png") });
} finally {
  await browser.close();
  server.kill("SIGINT");
}
