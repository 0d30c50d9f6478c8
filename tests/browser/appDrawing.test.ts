import { describe, expect, it } from "vitest";
import { grab, openStep } from "../support/appPage.ts";

const VIEW = { width: 1300, height: 850 };

describe("the zone on the drawing", () => {
  it("is changed by dragging, one undo for each drag, and never to what cannot be", async () => {
    const page = await openStep("Zone");
    await page.setViewportSize(VIEW);
    const wall = page.getByRole("button", { name: /^Right wall/ });
    const { x, y } = await grab(page, wall);
    for (const step of [10, 30, 60]) await page.mouse.move(x - step, y);
    await page.mouse.up();
    const inside = () => page.getByLabel("From left to right, inside").inputValue();
    // The last place is taken when it is let go.
    await expect.poll(inside).not.toBe("1200");
    const width = Number(await inside());
    expect(width).toBeLessThan(1190);
    expect(width % 5).toBe(0);
    // Far to the left of everything: it stops where the zone would be too small.
    const again = await grab(page, wall);
    await page.mouse.move(5, again.y, { steps: 6 });
    await page.mouse.up();
    await expect.poll(async () => Number(await inside())).toBeLessThan(width - 100);
    expect(Number(await inside())).toBeGreaterThan(300);
    expect(await page.locator(".fault").count()).toBe(0);
    await page.keyboard.press("Control+z");
    await expect.poll(inside).toBe(String(width));
    await page.keyboard.press("Control+z");
    await expect.poll(inside).toBe("1200");
  });

  it("is changed by the arrow keys, with what became of it said", async () => {
    const page = await openStep("Zone");
    await page.getByRole("button", { name: /^Doorway, its middle 160 mm/ }).press("ArrowRight");
    await page.getByRole("button", { name: /^Doorway, its middle 170 mm/ }).press("Shift+ArrowRight");
    const layer = page.getByRole("region", { name: "Handles on the drawing" });
    await expect.poll(() => layer.getByRole("status").textContent()).toContain("171 mm");
    await page.getByRole("button", { name: "Add a keep-out" }).click();
    await page.getByRole("button", { name: /^Keep-out 1, / }).press("ArrowUp");
    await page.getByRole("button", { name: /^Upper right corner of Keep-out 1, 90 mm/ }).press("ArrowRight");
    await page.getByRole("button", { name: /^Upper right corner of Keep-out 1, 100 mm/ }).waitFor();
  });
});

describe("the robot", () => {
  it("shows what follows from its measures, and takes drift in a team's words", async () => {
    const page = await openStep("Robot");
    const facts = page.getByRole("region", { name: "What follows" });
    await facts.getByText("It is 181 mm wide, the doorway 250 mm").waitFor();
    await page.getByLabel("What pushes the balls").selectOption("plate");
    await facts.getByText("a rolling ball slides off sideways").waitFor();
    const twist = page.getByLabel("After ten quarter turns too far by (short: −)");
    await twist.fill("9");
    await page.getByRole("img", { name: /^The robot from above/ }).waitFor();
    await page.getByLabel("Body, left to right").fill("300");
    await facts.getByText("it cannot drive in straight").waitFor();
    await page.getByLabel("Body, left to right").fill("5");
    await page.getByText(/to mend; until then the drawing/).waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(() => twist.inputValue()).toBe("9");
  });
});
