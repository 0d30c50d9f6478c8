import { describe, expect, it } from "vitest";
import { moveOf, openWatch, pictureOf, ready, runOf, secondOf } from "../support/appPage.ts";

describe("watching a run", () => {
  it("plays, pauses, and plays again from the end", async () => {
    const page = await openWatch();
    expect(await secondOf(page)).toBe(0);
    await page.getByRole("button", { name: "Play", exact: true }).click();
    await page.waitForFunction(
      () => Number(document.querySelector<HTMLInputElement>("input[type=range]")?.value) > 0.3,
    );
    await page.getByRole("button", { name: "Pause" }).click();
    const paused = await secondOf(page);
    await page.evaluate(() => new Promise(requestAnimationFrame));
    expect(await secondOf(page)).toBe(paused);
    await page.getByRole("slider", { name: "Time in the run" }).press("End");
    await page.getByRole("button", { name: "Play again" }).click();
    await page.getByRole("button", { name: "Pause" }).click();
    expect(await secondOf(page)).toBeLessThan(paused + 20);
  });

  it("shows another picture where the slider is put", async () => {
    const page = await openWatch();
    const before = await pictureOf(page);
    await page.getByRole("slider", { name: "Time in the run" }).fill("12.5");
    await expect.poll(() => secondOf(page)).toBe(12.5);
    await expect.poll(() => pictureOf(page)).toContain("12.5 s.");
    expect(await pictureOf(page)).not.toBe(before);
  });

  it("steps from move to move", async () => {
    const page = await openWatch();
    await expect.poll(() => moveOf(page)).toBe(1);
    await page.getByRole("button", { name: "Next move" }).click();
    await expect.poll(() => moveOf(page)).toBe(2);
    await page.getByRole("button", { name: "Move before" }).click();
    await expect.poll(() => moveOf(page)).toBe(1);
    await expect.poll(() => secondOf(page)).toBe(0);
  });

  it("lays the balls anew for the next placement, and as before for the same number", async () => {
    const page = await openWatch();
    const first = await pictureOf(page);
    await page.getByRole("button", { name: "Next placement" }).click();
    await expect.poll(() => pictureOf(page)).not.toBe(first);
    expect(await runOf(page)).toBe(1);
    await page.getByRole("button", { name: "Previous placement" }).click();
    await expect.poll(() => pictureOf(page)).toBe(first);
    await page.getByRole("spinbutton", { name: "Run" }).fill("1");
    await page.getByRole("spinbutton", { name: "Run" }).press("Enter");
    await expect.poll(() => pictureOf(page)).not.toBe(first);
  });

  it("finds a run that failed, and one that worked", async () => {
    const page = await openWatch();
    await page.getByRole("button", { name: "Show me one that failed" }).click();
    await ready(page);
    await page.getByRole("heading", { name: "This run fails" }).waitFor();
    const failed = await runOf(page);
    expect(failed).toBeGreaterThan(0);
    await page.getByRole("button", { name: "One that worked" }).click();
    await ready(page);
    await page.getByRole("heading", { name: "This run works" }).waitFor();
    expect(await runOf(page)).not.toBe(failed);
    // At its end every ball is ticked.
    await page.getByRole("slider", { name: "Time in the run" }).press("End");
    await expect
      .poll(() => page.locator(".balls li").allInnerTexts())
      .toSatisfy((texts: string[]) => texts.every((text) => text.includes("delivered at")));
  });

  it("goes on to the next run by itself when asked to", async () => {
    const page = await openWatch();
    await page.getByLabel("Go on to the next by itself").check();
    await page.getByRole("slider", { name: "Time in the run" }).press("End");
    // A tenth of a second before the end; the next run then takes its whole minute.
    await page.keyboard.press("Shift+ArrowLeft");
    await page.keyboard.press(" ");
    await expect.poll(() => runOf(page)).toBe(1);
    await page.getByRole("button", { name: "Pause" }).waitFor();
  });

  it("tells a run second by second and jumps to an event", async () => {
    const page = await openWatch();
    await page.getByText(/^Second by second \(/).click();
    const last = page.locator(".events li").last();
    await last.getByRole("button").click();
    const text = (await last.getByRole("button").textContent()) ?? "";
    const wanted = Number(text.replace(" s", ""));
    expect(wanted).toBeGreaterThan(0);
    await expect.poll(() => secondOf(page)).toBeCloseTo(wanted, 1);
  });

  it("follows the robot, shades what its pusher has passed over, and marks what went wrong", async () => {
    const page = await openWatch();
    await page.getByRole("button", { name: "Show me one that failed" }).click();
    await ready(page);
    expect(await runOf(page)).toBeGreaterThan(0);
    await page.getByRole("heading", { name: "This run fails" }).waitFor();
    await expect.poll(() => page.locator(".strip .marks").textContent()).toContain("✕");
    await page.getByRole("slider", { name: "Time in the run" }).fill("30");
    const drawn = () => page.locator(".frame").screenshot();
    /** The drawing once it no longer changes. */
    const still = async (last: Buffer): Promise<Buffer> => {
      const next = await drawn();
      return next.equals(last) ? next : still(next);
    };
    const plain = await still(await drawn());
    await page.getByLabel("Shade the floor its pusher has passed over").check();
    await expect.poll(async () => plain.equals(await drawn())).toBe(false);
    const shaded = await still(await drawn());
    await page.getByLabel("Follow the robot from nearer").check();
    await expect.poll(async () => shaded.equals(await drawn())).toBe(false);
    await page.getByLabel("Follow the robot from nearer").uncheck();
    await expect.poll(async () => shaded.equals(await drawn())).toBe(true);
  });

  it("shows what a robot would do that knew where the balls lie, also where they are laid", async () => {
    const page = await openWatch();
    const blind = await page.locator(".which").textContent();
    await page.getByRole("button", { name: "Show the best way" }).click();
    const section = page.getByRole("region", { name: "If the robot knew where they lie" });
    await section
      .getByText(/home after \d+\.\d s/)
      .first()
      .waitFor();
    await expect.poll(() => page.locator(".which").textContent()).toContain("All balls known");
    const way = await section.textContent();
    await page.getByRole("button", { name: /^Ball 1,/ }).press("Shift+ArrowRight");
    await expect.poll(() => section.textContent()).not.toBe(way);
    // Laid, run and planned: nothing comes any more that would stop the player.
    await page.locator("section.bar[aria-busy=false]").waitFor();
    await section.getByRole("button", { name: "Watch it" }).click();
    await page.getByRole("button", { name: "Pause" }).click();
    await section.getByRole("button", { name: "Back to the routine" }).click();
    await expect.poll(() => page.locator(".which").textContent()).toBe(blind);
  });
});
