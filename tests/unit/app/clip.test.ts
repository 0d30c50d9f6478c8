import { afterEach, describe, expect, it, vi } from "vitest";
import { clipCaptions } from "../../../src/app/handOn/clipCaptions.ts";
import { clipFormat } from "../../../src/app/handOn/clipFormat.ts";
import { makeClip } from "../../../src/app/handOn/clipWork.ts";
import type { Workers } from "../../../src/app/state/workers.ts";
import { ballsOf } from "../../../src/model/project.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { wilson } from "../../../src/num/interval.ts";
import { rangeWords } from "../../../src/report/rateWords.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { brokenLines } from "../../../src/view/clipFrame.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/** A browser that encodes codecs whose names begin so, up to a width. */
function pretendEncoder(able: readonly string[], mostWidth = 4000): void {
  const isConfigSupported = (config: VideoEncoderConfig): Promise<VideoEncoderSupport> =>
    Promise.resolve({
      supported: able.some((name) => config.codec.startsWith(name)) && config.width <= mostWidth,
      config,
    });
  vi.stubGlobal("VideoEncoder", { isConfigSupported });
}

afterEach(() => vi.unstubAllGlobals());

describe("the kind of file a clip is written as", () => {
  // mediabunny keeps what it asked for one size: each case has a size of its own.
  const measures = (width: number) => ({ width, height: 900, bitrate: 2e6 });

  it("is MP4 where the browser encodes for it, else WebM in the newer codec it has", async () => {
    pretendEncoder(["avc1", "vp09", "vp8"]);
    expect(await clipFormat(measures(702))).toMatchObject({ codec: "avc", name: "MP4", ending: "mp4" });
    pretendEncoder(["vp09", "vp8"]);
    expect(await clipFormat(measures(704))).toMatchObject({ codec: "vp9", name: "WebM", type: "video/webm" });
    pretendEncoder(["vp8"]);
    expect(await clipFormat(measures(706))).toMatchObject({ codec: "vp8", name: "WebM" });
  });

  it("is none where the browser has no encoder, or none for that size", async () => {
    expect(await clipFormat(measures(708))).toBeNull();
    pretendEncoder(["avc1", "vp09", "vp8"], 700);
    expect(await clipFormat(measures(710))).toBeNull();
  });

  it("packs each codec in a container that holds it", async () => {
    for (const [i, name] of ["avc1", "vp09", "vp8"].entries()) {
      pretendEncoder([name]);
      const found = await clipFormat(measures(720 + 2 * i));
      if (!found) throw new Error(`nothing for ${name}`);
      expect(found.container().getSupportedVideoCodecs()).toContain(found.codec);
    }
  });
});

const PROJECT = shippedProject();
const ROUTINE: Routine = {
  id: "own-1",
  pattern: "own",
  label: "two pushes into the corner",
  params: {},
  moves: [
    { kind: "drive", distanceMm: 300, speedMmPerS: 200 },
    { kind: "wait", durationS: 1 },
  ],
};
const RUNS = Array.from({ length: 10 }, (_, index) => recordTrial(compileTrial(PROJECT, ROUTINE), 1, index));
const RATE = wilson(91, 100);

describe("the captions of a clip", () => {
  it("name routine, rate with its interval, run, seed and what happens", () => {
    const captions = clipCaptions({
      ...{ routine: ROUTINE, seed: 1, rate: RATE, speed: 4 },
      runs: RUNS.slice(7, 8),
    });
    const [label, rate, now] = captions(0.5);
    expect(label).toBe("two pushes into the corner");
    expect(rate).toBe("91 of 100 runs bring every ball home (likely between 83 and 96; 100 simulated).");
    expect(now).toBe("Run 7, seed 1, at 0.5 s (4 × speed). Move 1: drive 300 mm.");
    const home = RUNS[7]?.outcome.delivered.filter(Boolean).length;
    expect(captions(1000)[2]).toContain(`The end: ${home} of ${ballsOf(PROJECT).length} balls home.`);
  });

  it("count the runs in which every ball is home by now", () => {
    // Three of the ten bring the last ball home, at 10, 20 and 30 s.
    const runs = RUNS.map(({ outcome, recording }, i) => ({
      recording,
      outcome: {
        ...outcome,
        delivered: outcome.delivered.map(() => i < 3),
        deliveredAtS: outcome.delivered.map((_, ball) => (i < 3 ? 10 * (i + 1) - ball : null)),
      },
    }));
    const captions = clipCaptions({ routine: ROUTINE, seed: 1, rate: RATE, speed: 4, runs });
    const range = rangeWords(wilson(3, 10));
    expect(captions(25).slice(1)).toEqual([
      `3 of these 10 runs bring every ball home (of 100, ${range}).`,
      "Runs 0 to 9, seed 1, at 25.0 s (4 × speed). Every ball is home in 2 by now.",
    ]);
    expect(captions(0)[2]).toContain("home in 0 by now");
    expect(captions(30)[2]).toContain("home in 3 by now");
  });

  it("are broken between words where they are too long for the picture", () => {
    const lines = brokenLines("one two three fourteen", 9, (text) => text.length);
    expect(lines).toEqual(["one two", "three", "fourteen"]);
    expect(brokenLines("unbreakable", 4, (text) => text.length)).toEqual(["unbreakable"]);
  });
});

describe("making a clip", () => {
  it("stops between two runs when it is told to, and says how far it is", async () => {
    const abort = new AbortController();
    const asked: number[] = [];
    const fractions: number[] = [];
    const workers = {
      run: (
        _project: unknown,
        _routine: unknown,
        task: { readonly index: number },
        { signal }: RequestInit,
      ) => {
        asked.push(task.index);
        if (task.index === 4) abort.abort(new Error("stopped"));
        return signal?.aborted ? Promise.reject(signal.reason) : Promise.resolve(RUNS[task.index]);
      },
    } as unknown as Workers;
    const wish = { project: PROJECT, routine: ROUTINE, seed: 1, rate: RATE, palette: {} as never };
    const made = makeClip(workers, { ...wish, shown: { runs: 10 } }, abort.signal, (frac) =>
      fractions.push(frac),
    );
    await expect(made).rejects.toThrow("stopped");
    expect(asked).toHaveLength(10);
    expect(fractions).toEqual([...fractions].sort((a, b) => a - b));
    expect(Math.max(...fractions)).toBeLessThan(0.1);
  });
});
