import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import {
  goTo,
  openApp,
  openEverything,
  openRanked,
  openStep,
  ready,
  type StepName,
  secondOf,
} from "../support/appPage.ts";
import { findingsBesidesContrast, findingsInBothThemes } from "../support/axe.ts";
import { numbersWithoutWhy } from "../support/whys.ts";

const STEPS = ["Zone", "Robot", "Routines", "Watch", "Weak spots", "Practice", "Jury"] as const;

/** The widest takes longest to draw: at one step it shows the same. */
const WIDTHS = [320, 360, 500, 768, 901, 1280, 2200, 3840];

/** Share of the drawing's pixels that are of each colour, by "r,g,b". */
async function coloursOf(page: Page): Promise<ReadonlyMap<string, number>> {
  const png = await page.locator(".frame").screenshot();
  const counts = await page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const pen = canvas.getContext("2d");
    pen?.drawImage(image, 0, 0);
    const pixels = pen?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray();
    const found: Record<string, number> = {};
    for (let i = 0; i < pixels.length; i += 4) {
      const key = `${pixels[i]},${pixels[i + 1]},${pixels[i + 2]}`;
      found[key] = (found[key] ?? 0) + 4 / pixels.length;
    }
    return found;
  }, png.toString("base64"));
  return new Map(Object.entries(counts));
}

/** A triangle of 300 × 300 mm in 1200 × 900 mm is 4 %, less lines and text. */
const FLOOR_AND_WEDGE = { "255,253,247": 0.3, "236,220,174": 0.01 };

/** Waits until each colour takes up more than its share of the drawing; then so much of it is drawn. */
async function expectColours(page: Page, shares: Readonly<Record<string, number>>): Promise<void> {
  const tooRare = async () => {
    const colours = await coloursOf(page);
    return Object.entries(shares).filter(([colour, share]) => !((colours.get(colour) ?? 0) > share));
  };
  await expect.poll(tooRare).toEqual([]);
}

/** The part of a step that is fetched last. */
const LAST_PARTS: Readonly<Partial<Record<StepName, string>>> = {
  Zone: "section.now",
  Robot: "section.now",
  Routines: "#routine",
  Watch: "section[aria-label='If the robot knew where they lie']",
  "Weak spots": "section[aria-label='What a sensor is worth']",
};

/** Opens a step, and waits until nothing of it is still to come. */
async function openWhole(page: Page, step: StepName): Promise<void> {
  await goTo(page, step);
  const last = LAST_PARTS[step];
  if (last) await page.locator(last).waitFor();
}

/** Run in the page before its own scripts. */
function withoutWebGl(): void {
  for (const kind of [HTMLCanvasElement, OffscreenCanvas]) {
    const original = kind.prototype.getContext as (
      this: unknown,
      type: string,
      ...rest: unknown[]
    ) => unknown;
    Object.assign(kind.prototype, {
      getContext(this: unknown, type: string, ...rest: unknown[]) {
        return type.startsWith("webgl") ? null : original.call(this, type, ...rest);
      },
    });
  }
}

describe("the page in both themes", () => {
  it("has nothing for axe to find, closed or opened up, and a why for every number", async () => {
    const page = await openRanked();
    const unexplained: string[] = [];
    for (const step of STEPS) {
      await openWhole(page, step);
      if (step === "Watch") {
        await page.getByRole("button", { name: "Show the best way" }).click();
        await page.getByRole("button", { name: "Watch it" }).waitFor();
        await page.getByLabel("Runs seen at once").selectOption("25");
        await page.getByText(/^25 faint runs/).waitFor();
      }
      // All that is seen while it is folded up is seen unfolded as well: its colours are tried there.
      expect(await findingsBesidesContrast(page)).toEqual([]);
      await openEverything(page);
      expect(await findingsInBothThemes(page)).toEqual([]);
      unexplained.push(...(await numbersWithoutWhy(page)).map((words) => `${step}: ${words}`));
    }
    expect(unexplained).toEqual([]);
    await page.keyboard.press("?");
    await page.getByRole("dialog", { name: "Keys" }).waitFor();
    expect(await findingsInBothThemes(page)).toEqual([]);
  });

  it("shows the projects, and a bad file's issues, without findings", async () => {
    const page = await openStep("Routines");
    await page.getByRole("button", { name: /^Projects/ }).click();
    await page.getByRole("dialog", { name: "Projects" }).waitFor();
    expect(await findingsInBothThemes(page)).toEqual([]);
    const file = {
      name: "bad.json",
      mimeType: "application/json",
      buffer: Buffer.from('{"formatVersion": 1}'),
    };
    await page.locator("input[type=file]").setInputFiles(file);
    await page.getByRole("alert").waitFor();
    expect(await findingsInBothThemes(page)).toEqual([]);
  });
});

describe("the drawing", () => {
  it("shows floor, wedge, robot and the first three balls", async () => {
    const page = await openApp({ colorScheme: "light" });
    await expectColours(page, {
      ...FLOOR_AND_WEDGE,
      "230,159,0": 0.0001,
      "86,180,233": 0.0001,
      "0,158,115": 0.0001,
    });
  });

  it("is drawn without WebGL too", async () => {
    const page = await openApp({ colorScheme: "light" }, withoutWebGl);
    await expectColours(page, FLOOR_AND_WEDGE);
  });

  it("follows the theme when it is switched", async () => {
    const page = await openStep("Routines", { colorScheme: "light" });
    await page.getByLabel("Theme").selectOption("dark");
    await expectColours(page, { "35,42,50": 0.3 });
    await page.emulateMedia({ contrast: "more" });
    await expectColours(page, { "0,0,0": 0.3 });
  });

  it("goes onto paper in the light colours, whatever the screen shows", async () => {
    const page = await openStep("Routines", { colorScheme: "dark" });
    await expectColours(page, { "35,42,50": 0.3 });
    await page.locator("canvas.on-paper").waitFor({ state: "attached" });
    const middle = await page.evaluate(() => {
      globalThis.dispatchEvent(new Event("beforeprint"));
      const paper = document.querySelector<HTMLCanvasElement>("canvas.on-paper");
      const pen = paper?.getContext("2d");
      if (!paper || !pen) return [];
      return [...pen.getImageData(Math.round(paper.width / 2), Math.round(0.4 * paper.height), 1, 1).data];
    });
    expect(middle).toEqual([255, 253, 247, 255]);
    await expectColours(page, { "35,42,50": 0.3 });
  });

  it("keeps its canvas as large as its frame when the window changes", async () => {
    const page = await openStep("Routines", { viewport: { width: 1300, height: 900 } });
    await page.setViewportSize({ width: 500, height: 800 });
    await expect
      .poll(() =>
        page.evaluate(() => {
          const frame = document.querySelector(".frame");
          const canvas = frame?.querySelector("canvas");
          return canvas && frame ? canvas.clientWidth - frame.clientWidth : Number.NaN;
        }),
      )
      .toBe(0);
  });
});

describe("small and large screens", () => {
  it("never need scrolling sideways", async () => {
    const page = await openRanked();
    for (const step of STEPS) {
      await openWhole(page, step);
      await openEverything(page);
      for (const width of step === "Zone" ? WIDTHS : WIDTHS.slice(0, -1)) {
        await page.setViewportSize({ width, height: 800 });
        // What is drawn to fit is drawn anew in the next frame.
        const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        await expect.poll(overflow, { message: `${step} at ${width} px` }).toBe(0);
      }
    }
  });

  it("puts the ranking beside the drawing where there is room", async () => {
    const page = await openStep("Routines", { viewport: { width: 1280, height: 800 } });
    await page.locator(".frame canvas").waitFor();
    const drawing = await page.locator(".frame").boundingBox();
    const ranking = await page.getByRole("heading", { name: "Routines, best first" }).boundingBox();
    expect(ranking?.x ?? 0).toBeGreaterThan((drawing?.x ?? 0) + (drawing?.width ?? 0));
    expect(ranking?.y ?? 0).toBeLessThan((drawing?.y ?? 0) + (drawing?.height ?? 0));
  });
});

describe("people who asked for less motion", () => {
  it("start every run themselves", async () => {
    const page = await openApp({ reducedMotion: "reduce" });
    await page.keyboard.press(" ");
    await page.getByRole("button", { name: "Pause" }).waitFor();
    await page.keyboard.press("n");
    await ready(page);
    expect(await secondOf(page)).toBe(0);
  });
});

describe("the page's security policy", () => {
  it("allows no inline scripts and no evaluation", async () => {
    const page = await openStep("Routines");
    const policy = await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content");
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toContain("unsafe-eval");
    expect(policy?.replace(/style-src [^;]*/, "")).not.toContain("unsafe-inline");
    expect(await page.locator("script:not([src])").count()).toBe(0);
  });
});
