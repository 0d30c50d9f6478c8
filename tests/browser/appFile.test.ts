import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openApp, openStep, pictureOf } from "../support/appPage.ts";
import { top } from "../support/sourceCheck.ts";

const upload = (text: string) => ({
  name: "our-zone.json",
  mimeType: "application/json",
  buffer: Buffer.from(text),
});

async function openFile(page: Page, text: string): Promise<void> {
  await page.getByRole("button", { name: /^Projects/ }).click();
  await page.locator("input[type=file]").setInputFiles(upload(text));
}

const own = readFileSync(join(top, "fields/long-narrow.json"), "utf8").replace(
  /"name": "[^"]*"/,
  '"name": "Our gym"',
);

describe("an own file", () => {
  it("that is wrong is answered with everything that is wrong, and changes nothing", async () => {
    const page = await openApp();
    const before = await pictureOf(page);
    expect(before).not.toBe("");
    const bad = { formatVersion: 1, zone: { widthMm: -5, heigthMm: 900 }, balls: [], robot: {} };
    await openFile(page, JSON.stringify(bad));
    const notice = page.getByRole("alert").filter({ hasText: "our-zone.json" });
    await notice.waitFor();
    const items = await notice.getByRole("listitem").allInnerTexts();
    expect(items.length).toBeGreaterThanOrEqual(4);
    expect(items.some((text) => text.includes("zone.widthMm") && text.includes("-5"))).toBe(true);
    expect(items.some((text) => text.includes("heigthMm"))).toBe(true);
    for (const text of items) expect(text).toMatch(/Found: .*Allowed: /s);
    expect(await pictureOf(page)).toBe(before);
    await notice.getByRole("button", { name: "Close this list" }).click();
    await expect.poll(() => notice.count()).toBe(0);
  });

  it("that is no JSON at all is told so", async () => {
    const page = await openStep("Routines");
    await openFile(page, "{ not json");
    await page.getByRole("alert").getByText("needs 1 repair").waitFor();
  });

  it("that is hostile is refused or shown as text", async () => {
    const page = await openStep("Routines");
    await page.evaluate(() => Object.assign(globalThis, { harmed: false }));
    const attack = "<img src=x onerror='globalThis.harmed=true'><script>harmed=true</script>";
    for (const text of [
      "[".repeat(200_000),
      own.replace(/"widthMm": \d+/, '"widthMm": 1e999'),
      own.replace(
        /}\s*$/,
        `, "routines": [{ "id": "a", "moves": [${'{"kind":"wait","durationS":1},'.repeat(20_000)}{}] }] }`,
      ),
    ]) {
      await openFile(page, text);
      await page
        .getByRole("alert")
        .filter({ hasText: /repair/ })
        .waitFor();
      await page.getByRole("button", { name: "Close this list" }).click();
    }
    await openFile(page, own.replace("Our gym", attack));
    await page.getByRole("heading", { level: 2, name: attack }).waitFor();
    expect(await page.evaluate(() => (globalThis as unknown as { harmed: boolean }).harmed)).toBe(false);
    expect(await page.locator("img, script:not([src])").count()).toBe(0);
  });

  it("that is right opens in place of the example, dropped on the page, and is still there after a reload", async () => {
    const page = await openStep("Routines");
    const transfer = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], "our-zone.json", { type: "application/json" }));
      return data;
    }, own);
    await page.dispatchEvent("body", "dragover", { dataTransfer: transfer });
    await page.getByText("Let go to open the project file").waitFor();
    await page.dispatchEvent("body", "drop", { dataTransfer: transfer });
    await page.getByRole("heading", { name: "Our gym" }).waitFor();
    await page.getByText("✓ kept in this browser").waitFor();
    await page.reload();
    await page.getByRole("heading", { name: "Our gym" }).waitFor();
  });
});
