import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { goTo, openApp, openStep, ready, runOf, stopRanking } from "../support/appPage.ts";
import { baseUrl, openPage } from "../support/page.ts";

const WIDTH = "From left to right, inside";

const RATE = /^[\d.]+ of 100 runs$/;

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel(label, { exact: true }).press("Enter");
}

const valueIn = (page: Page, label: string) => page.getByLabel(label, { exact: true }).inputValue();
const kept = (page: Page) => page.getByText("✓ kept in this browser").waitFor();

describe("a project under edit", () => {
  it("takes numbers with units, and says at once what cannot be", async () => {
    const page = await openStep("Zone");
    await type(page, WIDTH, "1.4 m");
    await page.getByRole("img", { name: /Zone 1400 mm wide/ }).waitFor();
    await expect.poll(() => valueIn(page, WIDTH)).toBe("1400");
    await page.getByLabel("Lengths in").selectOption("cm");
    await expect.poll(() => valueIn(page, WIDTH)).toBe("140");
    await page.getByRole("img", { name: /Zone 140 cm wide/ }).waitFor();
    await page.getByLabel(WIDTH).fill("5");
    await page.getByText("It must be a number from 200 to 20000 mm.").first().waitFor();
    await page.getByLabel(WIDTH).fill("wide");
    await page.getByText("“wide” is not a length").waitFor();
    // The drawing keeps to the last sound state.
    await page.getByRole("img", { name: /Zone 140 cm wide/ }).waitFor();
    await type(page, WIDTH, "130");
    await page.getByRole("img", { name: /Zone 130 cm wide/ }).waitFor();
    await goTo(page, "Routines");
    await page.getByText("130 × 90 cm").waitFor();
    expect(await page.locator(".fault").count()).toBe(0);
  });

  it("ranks the routines anew after a change, and undoes and redoes everything", async () => {
    const page = await openStep("Zone");
    await type(page, WIDTH, "1000");
    await page.getByLabel("In which corner").selectOption("upper-left");
    await kept(page);
    await goTo(page, "Routines");
    await ready(page);
    await goTo(page, "Zone");
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.getByLabel("In which corner").inputValue()).toBe("upper-right");
    await page.keyboard.press("Control+z");
    await expect.poll(() => valueIn(page, WIDTH)).toBe("1200");
    await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
    await page.keyboard.press("Control+Shift+z");
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => page.getByLabel("In which corner").inputValue()).toBe("upper-left");
    await page.getByRole("img", { name: /Zone 1000 mm wide.*upper left/ }).waitFor();
    await page.getByRole("region", { name: "What a change does" }).getByText(RATE).first().waitFor();
  });

  it("is kept, opened again, duplicated and thrown away", async () => {
    const page = await openStep("Zone");
    await type(page, "Name of the project", "Our hall");
    // At once: before it can have been written down.
    await page.reload();
    await page.getByRole("button", { name: /^Projects, open: Our hall/ }).click();
    await page.getByRole("button", { name: "Duplicate" }).click();
    await page.getByRole("button", { name: /^Projects, open: Our hall \(2\)/ }).click();
    const shelf = page.getByRole("region", { name: "Your projects" });
    await expect.poll(() => shelf.getByRole("listitem").count()).toBe(2);
    await shelf.getByRole("button", { name: "Throw away Our hall (2)" }).click();
    await shelf.getByRole("button", { name: "Throw away Our hall (2)" }).click();
    await expect.poll(() => shelf.getByRole("listitem").count()).toBe(1);
  });
});

describe("a link", () => {
  it("opens the very run that was on screen, in a browser that knows nothing of it", async () => {
    const page = await openApp();
    await goTo(page, "Zone");
    await type(page, WIDTH, "1150");
    await kept(page);
    await goTo(page, "Watch");
    await ready(page);
    // Of the rows that there are by now; those to come would move it to another place.
    await goTo(page, "Routines");
    await stopRanking(page, 2);
    await page.keyboard.press("2");
    await page.getByText(/^Routine 2 of \d+:/).waitFor();
    await goTo(page, "Watch");
    await page.getByRole("spinbutton", { name: "Run" }).fill("7");
    await page.getByRole("spinbutton", { name: "Run" }).press("Enter");
    await ready(page);
    const routine = await page.getByText(/^Routine \d+ of \d+:/).textContent();
    await page.getByRole("button", { name: /^Projects/ }).click();
    await page.getByRole("button", { name: "Copy a link to this run" }).click();
    const link = await page.getByLabel("Link", { exact: true }).inputValue();
    expect(link.length).toBeLessThan(4000);
    const other = await openPage(link.slice(baseUrl.length));
    await ready(other);
    await goTo(other, "Watch");
    await expect.poll(() => runOf(other)).toBe(7);
    const label = (text: string | null) => text?.replace(/^.*?: /, "");
    const shown = () => other.getByText(/^Routine \d+ of \d+:/).textContent();
    await expect.poll(async () => label(await shown())).toBe(label(routine));
    await goTo(other, "Zone");
    await expect.poll(() => valueIn(other, WIDTH)).toBe("1150");
    // What was changed of it is not gone when the page is loaded anew at once, link in the address or not.
    await type(other, WIDTH, "1160");
    await other.reload();
    await goTo(other, "Zone");
    await expect.poll(() => valueIn(other, WIDTH)).toBe("1160");
    // Nor when it is kept while the reload, which goes to the link, is under way.
    await kept(other);
    await other.evaluate((hash) => history.replaceState(null, "", hash), new URL(link).hash);
    await other.reload();
    await goTo(other, "Zone");
    await expect.poll(() => valueIn(other, WIDTH)).toBe("1160");
  });

  it.each(["#w1=AAAA", "#w1=%%%", `#w1=${"A".repeat(500_000)}`])(
    "that is damaged is refused: %#",
    async (hash) => {
      const page = await openPage(hash);
      await page
        .getByRole("alert")
        .getByText(/The link cannot be opened/)
        .waitFor();
      await page.getByRole("heading", { name: "The usual zone" }).waitFor();
    },
  );
});

describe("two tabs on one project", () => {
  it("do not write over each other", async () => {
    const page = await openStep("Zone");
    await type(page, "Name of the project", "Shared");
    await kept(page);
    const other = await page.context().newPage();
    await other.goto(baseUrl);
    await goTo(other, "Zone");
    await type(other, WIDTH, "1300");
    await kept(other);
    await type(page, WIDTH, "1100");
    await page.getByText(/changed or thrown away in another tab/).waitFor();
    await page.getByRole("button", { name: /^Projects, open: Shared \(2\)/ }).waitFor();
    await other.reload();
    await goTo(other, "Zone");
    await expect.poll(() => valueIn(other, WIDTH)).toBe("1300");
  });
});

describe("damaged storage", () => {
  it("is put aside and told, never dropped", async () => {
    const page = await openStep("Zone");
    await type(page, "Name of the project", "Precious");
    await kept(page);
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const open = indexedDB.open("wedgeward");
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const store = open.result.transaction("projects", "readwrite").objectStore("projects");
            const read = store.openCursor();
            read.onsuccess = () => {
              const cursor = read.result;
              if (!cursor) return resolve();
              cursor.update({ ...cursor.value, text: '{"formatVersion": 1, "zone"' });
              cursor.continue();
            };
          };
        }),
    );
    await page.reload();
    const told = page.getByText(/stored project “Precious” is damaged/);
    await told.waitFor();
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save what is there" }).click();
    expect((await download).suggestedFilename()).toBe("Precious-damaged.json");
    await page.reload();
    await told.waitFor();
    await page.getByRole("button", { name: "Throw it away" }).click();
    await expect.poll(() => told.count()).toBe(0);
  });
});
