import { describe, expect, it } from "vitest";
import { linkToRun, ready } from "../support/appPage.ts";
import { openPage } from "../support/page.ts";

describe("a first visit", () => {
  it("is led in five stops from the example to the team's own zone, once", async () => {
    const page = await openPage();
    const tour = page.getByRole("region", { name: "Tour" });
    for (let stop = 1; stop < 5; stop++) {
      await tour.getByText(`Tour, ${stop} of 5`).waitFor();
      await tour.getByRole("button", { name: "Next stop" }).click();
    }
    await page.getByRole("heading", { name: "The zone", exact: true }).waitFor();
    await tour.getByRole("button", { name: "Begin" }).click();
    await page.reload();
    await page.getByRole("heading", { name: "The usual zone" }).waitFor();
    expect(await tour.count()).toBe(0);
    await page.getByRole("button", { name: "Help" }).click();
    const help = page.getByRole("dialog", { name: "Help" });
    await help.getByText("fingers, hair and sleeves").waitFor();
    expect(await help.getByRole("term").count()).toBeGreaterThan(12);
    await help.getByRole("button", { name: /^Take the tour/ }).click();
    await tour.getByText("Tour, 1 of 5").waitFor();
  });
});

describe("without a network", () => {
  it("the page opens and runs after a first visit", async () => {
    const page = await openPage(await linkToRun());
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.context().setOffline(true);
    await page.reload();
    await ready(page);
    await page.getByRole("button", { name: /^Projects/ }).click();
    await page.getByRole("button", { name: "Long narrow" }).click();
    await page.getByRole("img", { name: /^Drawing\. Zone/ }).waitFor();
  });
});

describe("the first load", () => {
  it("stays under 300 kB of script for the page, packed, and 325 kB with its worker", async () => {
    const page = await openPage();
    await page.getByRole("button", { name: "Cancel" }).waitFor();
    await page.locator(".frame canvas").waitFor();
    // The worker's script is listed once it has come, which may be after the page has drawn.
    await page.waitForFunction(() =>
      performance.getEntriesByType("resource").some(({ name }) => name.includes("browserWorker")),
    );
    const packed = await page.evaluate(async () => {
      const scripts = performance
        .getEntriesByType("resource")
        .map(({ name }) => name)
        .filter((name) => new URL(name).pathname.endsWith(".js"));
      const sizes = await Promise.all(
        [...new Set(scripts)].map(async (name) => {
          const { body } = await fetch(name);
          const bytes = body
            ? await new Response(body.pipeThrough(new CompressionStream("gzip"))).arrayBuffer()
            : null;
          return { worker: name.includes("browserWorker"), bytes: bytes?.byteLength ?? 0 };
        }),
      );
      const sum = (each: typeof sizes) => each.reduce((total, { bytes }) => total + bytes, 0);
      return { page: sum(sizes.filter(({ worker }) => !worker)), all: sum(sizes) };
    });
    expect(packed.page).toBeGreaterThan(100_000);
    expect(packed.page).toBeLessThan(300_000);
    expect(packed.all).toBeGreaterThan(packed.page);
    expect(packed.all).toBeLessThan(325_000);
  });
});
