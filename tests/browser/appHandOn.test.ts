import type { Download } from "playwright-core";
import { describe, expect, it } from "vitest";
import { goTo, openApp, openRanked } from "../support/appPage.ts";
import { numbersWithoutWhy } from "../support/whys.ts";

/** Read as it comes: the browser may run elsewhere. */
async function contentOf(download: Download): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

/** Plays a clip, in the page: its size, and how many pixels differ between its beginning and its middle, by part of the picture. */
async function playedBack(url: string) {
  const video = document.createElement("video");
  video.muted = true;
  video.src = url;
  const on = (event: string) =>
    new Promise((resolve, reject) => {
      video.addEventListener(event, resolve, { once: true });
      video.onerror = () => reject(new Error(video.error?.message));
    });
  await on("loadeddata");
  const { videoWidth: width, videoHeight: height, duration: durationS } = video;
  const pen = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true });
  const frameAt = async (timeS: number) => {
    const there = on("seeked");
    video.currentTime = timeS;
    await there;
    pen?.drawImage(video, 0, 0);
    return pen?.getImageData(0, 0, width, height).data ?? new Uint8ClampedArray();
  };
  const [first, second] = [await frameAt(0.04), await frameAt(durationS / 2)];
  const count = (fromY: number, toY: number, holds: (at: number) => boolean) => {
    let found = 0;
    for (let at = 4 * width * fromY; at < 4 * width * toY; at += 4) if (holds(at)) found++;
    return found;
  };
  const CAPTIONS_PX = 144;
  const differs = (at: number) => Math.abs((first[at] ?? 0) - (second[at] ?? 0)) > 60;
  return {
    ...{ width, height, durationS },
    zone: count(0, height - CAPTIONS_PX, differs),
    name: count(height - CAPTIONS_PX, height - CAPTIONS_PX + 18, differs),
    clock: count(height - CAPTIONS_PX + 44, height, differs),
    inked: count(height - CAPTIONS_PX, height - CAPTIONS_PX + 18, (at) => (first[at] ?? 255) < 128),
  };
}

const wide = { viewport: { width: 1300, height: 900 } };

const TESTS = `test;commanded;measured;more
straight;1000;981,5;4
straight;1000;984;2
straight;1000;979;5
turn;900;871;10
turn;900;869,5;10
turn;900;873;10
`;

describe("from plan to practice", () => {
  it("gives the coder steps as a table and as a listing", async () => {
    const page = await openApp(wide);
    await goTo(page, "Practice");
    await page.locator("#step .wide tbody tr").first().waitFor();
    const rows = await page.locator("#step .wide tbody tr").count();
    expect(rows).toBeGreaterThan(20);
    // Folded on the screen until someone asks, never on paper.
    const seen = () => page.locator("#step .wide tbody tr:visible").count();
    await expect.poll(seen).toBe(10);
    await page.emulateMedia({ media: "print" });
    await expect.poll(seen).toBe(rows);
    await page.emulateMedia({ media: "screen" });
    await page.getByRole("button", { name: `Show all ${rows} steps` }).click();
    await expect.poll(seen).toBe(rows);
    expect(await numbersWithoutWhy(page)).toEqual([]);
    await page.getByLabel("Written as").selectOption("python");
    await expect.poll(() => page.getByLabel("The listing").inputValue()).toContain("def routine():");
    const listing = await page.getByLabel("The listing").inputValue();
    expect(listing.match(/ {2}# \d+(:|$)/gm)).toHaveLength(rows);
    const saved = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as a file" }).click();
    expect((await saved).suggestedFilename()).toMatch(/^steps-.*\.py$/);
  });

  it("takes what was measured into the project, and back out; nothing typed is lost", async () => {
    const page = await openApp(wide);
    await goTo(page, "Practice");
    await page.getByLabel("Tape measure").check();
    await page.getByText("The table, one test a line").click();
    await page.getByLabel("Table of tests").fill(`${TESTS}straigt;1000;990\n`);
    await page.getByText("Did you mean straight?").waitFor();
    await page.getByLabel("Table of tests").fill(TESTS);
    await page.getByText("Told to turn by 90° it turns 2.9° too little.").waitFor();
    // How far to drive is said, not worked out.
    expect(await numbersWithoutWhy(page)).toEqual([expect.stringMatching(/^Make each test/)]);
    await page.getByRole("button", { name: "Use these in the project" }).click();
    await page.getByText("The project holds these values already.").waitFor();
    await page.keyboard.press("Control+z");
    await page.getByRole("button", { name: "Use these in the project" }).waitFor();
    await page.getByText("✓ kept in this browser").waitFor();
    await page.reload();
    await goTo(page, "Practice");
    await page.getByLabel("Tape measure").check();
    await expect.poll(() => page.getByLabel("Table of tests").inputValue()).toBe(TESTS);
  });

  it("proposes placements, keeps what happened, and holds it against the model", async () => {
    const page = await openApp(wide);
    await goTo(page, "Practice");
    await page.getByLabel("Practice runs").check();
    await page.getByLabel("Placements").fill("5");
    await page.getByRole("button", { name: "Propose placements" }).click();
    await page.getByText("Run 5").waitFor();
    for (const select of await page.getByLabel("Balls home").all()) await select.selectOption("0");
    // A run that was just written down was mostly made today.
    const day = page.getByLabel("day", { exact: true }).first();
    await expect.poll(() => day.inputValue()).toMatch(/^\d{4}-\d\d-\d\d$/);
    await page.getByRole("button", { name: "Hold 5 runs against the model" }).click();
    await page.getByText(/The model promised [\d.]+ of 100, you got 0 of 5/).waitFor();
    await page.getByText(/Success rate after these runs: 14 of 100/).waitFor();
    expect(await numbersWithoutWhy(page)).toEqual([]);
  });
});

describe("for the jury", () => {
  it("writes a decision down, runs it again, and shows it on the sheet", async () => {
    const page = await openRanked(wide);
    await goTo(page, "Jury");
    await page.getByLabel("Decision notebook").check();
    await page.getByLabel("Date").fill("2031-04-09");
    await page.getByLabel("Why we decided so").fill("It needs no sensor.");
    await page.getByRole("button", { name: /^Write it down/ }).click();
    await page.getByText("2031-04-09: Kept").waitFor();
    await page.getByRole("button", { name: "Run it again" }).click();
    await page.getByText("the same figures.").waitFor();
    expect(await numbersWithoutWhy(page)).toEqual([]);
    await page.getByLabel("Jury sheet").check();
    await page.getByLabel("For", { exact: true }).selectOption("visitors");
    await page.getByRole("button", { name: "Gather the evidence" }).click();
    const sheet = page.frameLocator("iframe[title='The sheet']");
    await sheet.getByText("What we changed on the way").waitFor();
    await sheet.getByText("It needs no sensor.").waitFor();
    await expect
      .poll(() => page.getByRole("button", { name: "Print, or save as PDF" }).isEnabled())
      .toBe(true);
  });

  it("saves a poster as a picture, and a clip that plays", async () => {
    const page = await openApp(wide);
    await goTo(page, "Jury");
    await page.getByLabel("Poster and clip").check();
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as PNG" }).click();
    const png = await contentOf(await saving);
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    // Width and height stand first in the header of a PNG file.
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1800, 2400]);
    // MP4 where this browser encodes for it; the button says which kind it will be.
    const [kind, type] = (await page.evaluate(
      async () =>
        (
          await VideoEncoder.isConfigSupported({
            ...{ codec: "avc1.64001f", width: 720, height: 676, bitrate: 2e6 },
          })
        ).supported,
    ))
      ? ["MP4", "video/mp4"]
      : ["WebM", "video/webm"];
    await page.getByLabel("Show", { exact: true }).selectOption("many");
    const writing = page.waitForEvent("download");
    await page.getByRole("button", { name: `Make a clip and save it as ${kind}` }).click();
    const clip = await writing;
    expect(clip.suggestedFilename()).toMatch(new RegExp(`^runs-0-99-.*\\.${String(kind).toLowerCase()}$`));
    await page.getByText(`Saved as ${kind}: `).waitFor();
    const bytes = await contentOf(clip);
    // A page of its own: this one's security policy lets no video in.
    const player = await page.context().newPage();
    const played = await player.evaluate(playedBack, `data:${type};base64,${bytes.toString("base64")}`);
    expect(played.width).toBe(720);
    expect(played.height).toBeGreaterThan(400);
    expect(played.durationS).toBeGreaterThan(2);
    // The runs move, and so does the clock in the captions; the routine's name above it stands still.
    expect(played.zone).toBeGreaterThan(500);
    expect(played.clock).toBeGreaterThan(50);
    expect(played.name).toBeLessThan(50);
    expect(played.inked).toBeGreaterThan(300);
  });
});
