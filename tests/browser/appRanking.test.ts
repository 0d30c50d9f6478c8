import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openApp, pictureOf, ready } from "../support/appPage.ts";
import { openPage } from "../support/page.ts";
import { top } from "../support/sourceCheck.ts";

const RATE = /\d+(\.\d)? of 100 runs \(likely between \d+ and \d+\)/;

describe("the ranking", () => {
  it("appears by itself, best first, with rate and range in words", async () => {
    const page = await openApp();
    const rows = page.getByRole("region", { name: "Routines, best first" }).getByRole("listitem");
    const texts = (await rows.allInnerTexts()).map((text) => text.replace(/\s+/g, " "));
    expect(texts.length).toBeGreaterThanOrEqual(5);
    const tested = texts.filter((text) => RATE.test(text));
    expect(tested.length).toBe(texts.length);
    const rates = tested.map((text) => Number(/([\d.]+) of 100 runs/.exec(text)?.[1]));
    expect([...rates].sort((a, b) => b - a)).toEqual(rates);
  });

  it("lets another routine be chosen: drawing, numbers and moves follow", async () => {
    const page = await openApp();
    const before = await pictureOf(page);
    const title = page.locator("#routine");
    const first = (await title.textContent()) ?? "";
    const rows = page.getByRole("region", { name: "Routines, best first" }).getByRole("listitem");
    const other = rows.getByRole("button").filter({ hasNotText: first }).first();
    await other.click();
    await expect.poll(() => title.textContent()).not.toBe(first);
    await page.getByText(/^The \d+ moves$/).click();
    expect(await page.locator(".sheet ol li").count()).toBeGreaterThan(2);
    await page.getByRole("button", { name: "Next move" }).click();
    expect(await pictureOf(page)).not.toBe(before);
  });

  it("can be cancelled and taken up again, and the page stays usable meanwhile", async () => {
    const page = await openPage();
    await page.getByRole("button", { name: "Cancel" }).click();
    await page.getByText("Stopped. What is known so far is shown.").waitFor();
    expect(await page.getByRole("progressbar").count()).toBe(0);
    await page.getByRole("button", { name: "Go on" }).click();
    await page.getByRole("progressbar").first().waitFor();
    await page.getByRole("button", { name: "Keys" }).click();
    await page.getByRole("heading", { name: "Keys" }).waitFor();
    await page.getByRole("button", { name: "Close" }).click();
    await ready(page);
  });

  it("starts anew for another field", async () => {
    const page = await openApp();
    await page.getByLabel("Field", { exact: true }).selectOption("plate-robot");
    await page.getByRole("heading", { level: 2, name: /plate/i }).waitFor();
    await ready(page);
    expect(await page.getByRole("img").first().getAttribute("aria-label")).toContain("Wedge in the");
  });
});

describe("an own file", () => {
  const upload = (text: string) => ({
    name: "our-zone.json",
    mimeType: "application/json",
    buffer: Buffer.from(text),
  });

  it("that is wrong is answered with everything that is wrong, and changes nothing", async () => {
    const page = await openApp();
    const before = await pictureOf(page);
    const bad = { formatVersion: 1, zone: { widthMm: -5, heigthMm: 900 }, balls: [], robot: {} };
    await page.locator("input[type=file]").setInputFiles(upload(JSON.stringify(bad)));
    const notice = page.getByRole("alert").filter({ hasText: "our-zone.json" });
    await notice.waitFor();
    const items = await notice.getByRole("listitem").allInnerTexts();
    expect(items.length).toBeGreaterThanOrEqual(4);
    expect(items.some((text) => text.includes("zone.widthMm") && text.includes("-5"))).toBe(true);
    expect(items.some((text) => text.includes("heigthMm"))).toBe(true);
    for (const text of items) expect(text).toMatch(/Found: .*Allowed: /s);
    expect(await pictureOf(page)).toBe(before);
    await notice.getByRole("button", { name: "Close this list" }).click();
    expect(await notice.count()).toBe(0);
  });

  it("that is no JSON at all is told so", async () => {
    const page = await openApp();
    await page.locator("input[type=file]").setInputFiles(upload("{ not json"));
    await page.getByRole("alert").getByText("needs 1 repair").waitFor();
  });

  it("that is right opens in place of the shipped field", async () => {
    const page = await openApp();
    const own = readFileSync(join(top, "fields/long-narrow.json"), "utf8").replace(
      /"name": "[^"]*"/,
      '"name": "Our gym"',
    );
    await page.locator("input[type=file]").setInputFiles(upload(own));
    await page.getByRole("heading", { name: "Our gym" }).waitFor();
    await ready(page);
    expect(await page.getByLabel("Field", { exact: true }).locator("option:checked").textContent()).toBe(
      "our-zone.json",
    );
    // And is still there when the page is opened again.
    await page.reload();
    await page.getByRole("heading", { name: "Our gym" }).waitFor();
  });
});
