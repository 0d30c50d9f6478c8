import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { goTo, grab, openStep } from "../support/appPage.ts";
import { findings } from "../support/axe.ts";

const VIEW = { width: 1200, height: 850 };

/** A drawn "photo": a robot as a grey block on white, its front up. */
async function photoFile(page: Page) {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(600, 800);
    const pen = canvas.getContext("2d");
    if (!pen) throw new Error("no pen");
    pen.fillStyle = "#fff";
    pen.fillRect(0, 0, 600, 800);
    pen.fillStyle = "#889";
    pen.fillRect(150, 200, 300, 400);
    pen.fillStyle = "#222";
    for (const x of [150, 400]) pen.fillRect(x, 300, 50, 200);
    const blob = await canvas.convertToBlob({ type: "image/png" });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  return { name: "robot.png", mimeType: "image/png", buffer: Buffer.from(bytes) };
}

async function openOutline(page: Page) {
  await page.getByLabel("What pushes the balls").selectOption("polygon");
  await page.getByRole("button", { name: "Draw it, with a photo or without" }).click();
  const dialog = page.getByRole("dialog", { name: "The robot’s outline" });
  await dialog.waitFor();
  return dialog;
}

/** Drags from the middle of a thing by so many pixels. */
async function drag(page: Page, name: RegExp | string, dx: number, dy: number): Promise<void> {
  const { x, y } = await grab(page, page.getByRole("button", { name }));
  await page.mouse.move(x + dx / 2, y + dy / 2);
  await page.mouse.move(x + dx, y + dy);
  await page.mouse.up();
}

const cornersOf = (page: Page) => page.getByRole("button", { name: /^Corner \d+,/ }).count();

describe("the robot's outline", () => {
  it("is drawn point by point over a photo that stays in this browser, and undone", async () => {
    const page = await openStep("Robot", { viewport: VIEW });
    const dialog = await openOutline(page);
    const wrong = { name: "robot.png", mimeType: "image/png", buffer: Buffer.from("<svg onload=alert(1)>") };
    await dialog.locator("input[type=file]").setInputFiles(wrong);
    await dialog.getByText("That is no picture this browser can read").waitFor();
    await dialog.locator("input[type=file]").setInputFiles(await photoFile(page));
    await dialog.getByRole("button", { name: "Ruler, one end" }).press("ArrowRight");
    await dialog.getByLabel("True distance between the ruler’s ends, mm").fill("1e9");
    await dialog.getByText("A distance from 10 to 5000 mm.").waitFor();
    await dialog.getByLabel("True distance between the ruler’s ends, mm").fill("28 cm");
    await dialog.getByText(/^By these marks the wheels are 90 mm apart, but/).waitFor();
    await drag(page, "Middle of the right wheel", 40, 0);
    await expect.poll(() => dialog.getByText(/^By these marks the wheels are 90 mm/).count()).toBe(0);
    await dialog.getByText(/^By these marks/).click();
    await page.keyboard.press("Control+z");
    await dialog.getByText(/^By these marks the wheels are 90 mm/).waitFor();
    await dialog.getByRole("button", { name: "Throw the photo away" }).click();
    await expect.poll(() => dialog.getByText(/^By these marks/).count()).toBe(0);
    await page.keyboard.press("Control+z");
    await dialog.getByText(/^By these marks the wheels are 90 mm/).waitFor();
    if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/outline-photo.png` });

    await dialog.getByRole("button", { name: "Points" }).click();
    await dialog.getByRole("button", { name: "Begin with a box" }).click();
    await expect.poll(() => cornersOf(page)).toBe(4);
    await drag(page, "Add a corner between 2 and 3", 30, 0);
    await expect.poll(() => cornersOf(page)).toBe(5);
    if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/outline-points.png` });
    await page.keyboard.press("Control+z");
    await expect.poll(() => cornersOf(page)).toBe(4);
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => cornersOf(page)).toBe(5);
    // What makes the robot wider than the doorway stops, and says why.
    await drag(page, /^Corner 4,/, 0, -250);
    await dialog
      .getByText("The robot is wider than the doorway it comes through", { exact: false })
      .waitFor();
    await page.getByRole("button", { name: /^Corner 4,/ }).press("Delete");
    await expect.poll(() => cornersOf(page)).toBe(4);
    await dialog.getByRole("button", { name: "Pusher" }).click();
    const edge = dialog.getByRole("button", { name: "Edge from corner 1 to 2 touches balls" });
    await expect.poll(() => edge.getAttribute("aria-pressed")).toBe("false");
    await edge.press("Enter");
    await expect.poll(() => edge.getAttribute("aria-pressed")).toBe("true");
    if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/outline-pusher.png` });

    await dialog.getByRole("button", { name: "Done" }).click();
    await page.getByText("✓ kept in this browser").waitFor();
    await page.reload();
    await goTo(page, "Robot");
    await page.getByRole("button", { name: "Draw it, with a photo or without" }).click();
    await page.getByText(/^By these marks the wheels are 90 mm/).waitFor();
    await expect
      .poll(() => page.evaluate(() => document.documentElement.outerHTML.includes("blob:")))
      .toBe(true);
  });
});

describe.each(["light", "dark"] as const)("the sheet in the %s theme", (colorScheme) => {
  it("has nothing for axe to find, at 360 px too", async () => {
    const page = await openStep("Robot", { viewport: { width: 360, height: 740 }, colorScheme });
    const dialog = await openOutline(page);
    await dialog.locator("input[type=file]").setInputFiles(await photoFile(page));
    await dialog.getByRole("button", { name: "Ruler, one end" }).waitFor();
    for (const task of ["Photo", "Points", "Pusher"]) {
      await dialog.getByRole("button", { name: task, exact: true }).click();
      expect(await findings(page)).toEqual([]);
      if (process.env.SHOTS)
        await page.screenshot({ path: `${process.env.SHOTS}/outline-${colorScheme}-${task}.png` });
    }
  });
});
