import {
  BufferTarget,
  CanvasSource,
  getFirstEncodableVideoCodec,
  Mp4OutputFormat,
  Output,
  WebMOutputFormat,
} from "mediabunny";
import { type ClipScene, clipSize, drawClipFrame } from "../../view/clipFrame.ts";

export interface Clip {
  readonly bytes: ArrayBuffer;
  readonly type: "video/webm" | "video/mp4";
  readonly ending: "webm" | "mp4";
}

export interface ClipOptions {
  /** Seconds of the runs shown in one second of the clip. */
  readonly speed: number;
  readonly signal: AbortSignal;
  readonly onProgress: (doneFrac: number) => void;
}

const WIDTH_PX = 720;
const FRAMES_PER_S = 25;
const BITS_PER_S = 2_000_000;
/** How long the last picture stands, s. */
const HOLD_S = 1.5;

/** Whether this browser can write a clip at all. */
export async function canWriteClips(): Promise<boolean> {
  return typeof VideoEncoder !== "undefined" && (await formatOf()) !== null;
}

/** Draws the runs frame by frame and packs them as a file; null when stopped. @throws Error where the browser cannot */
export async function writeClip(
  scene: ClipScene,
  { speed, signal, onProgress }: ClipOptions,
): Promise<Clip | null> {
  const found = await formatOf();
  if (found === null) throw new Error("this browser cannot write videos; another one can");
  const { width, height } = clipSize(scene.project, WIDTH_PX);
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error("this browser cannot draw the pictures of a video");
  const source = new CanvasSource(canvas, { codec: found.codec, bitrate: BITS_PER_S });
  const target = new BufferTarget();
  const output = new Output({ format: found.format, target });
  output.addVideoTrack(source, { frameRate: FRAMES_PER_S });
  await output.start();
  const endS = Math.max(...scene.runs.map(({ durationS }) => durationS));
  const frames = Math.ceil((endS / speed + HOLD_S) * FRAMES_PER_S);
  for (let frame = 0; frame < frames; frame++) {
    if (signal.aborted) {
      await output.cancel();
      return null;
    }
    drawClipFrame(pen, scene, Math.min(endS, (frame * speed) / FRAMES_PER_S));
    await source.add(frame / FRAMES_PER_S, 1 / FRAMES_PER_S);
    onProgress(frame / frames);
    // The page stays alive between pictures.
    if (frame % 10 === 0) await new Promise((resolve) => setTimeout(resolve));
  }
  await output.finalize();
  if (target.buffer === null) throw new Error("the video came out empty");
  return { bytes: target.buffer, type: found.type, ending: found.ending };
}

/** WebM where the browser encodes for it, else MP4, else null. */
async function formatOf() {
  const size = { width: WIDTH_PX, height: WIDTH_PX, bitrate: BITS_PER_S };
  const webm = await getFirstEncodableVideoCodec(["vp9", "vp8"], size);
  if (webm)
    return { codec: webm, format: new WebMOutputFormat(), type: "video/webm", ending: "webm" } as const;
  const mp4 = await getFirstEncodableVideoCodec(["avc"], size);
  return mp4 && ({ codec: mp4, format: new Mp4OutputFormat(), type: "video/mp4", ending: "mp4" } as const);
}
