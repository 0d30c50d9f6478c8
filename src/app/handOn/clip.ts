import { BufferTarget, CanvasSource, Output } from "mediabunny";
import type { Project } from "../../model/project.ts";
import { clipTexts as t } from "../../texts/english/clip.ts";
import { type ClipScene, clipSize, drawClipFrame } from "../../view/clipFrame.ts";
import { type ClipFormat, clipFormat } from "./clipFormat.ts";

export interface Clip {
  readonly bytes: ArrayBuffer;
  readonly format: ClipFormat;
  readonly durationS: number;
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

/** The kind of file this browser writes clips of a project as; null where it cannot. */
export function formatFor(project: Project): Promise<ClipFormat | null> {
  return clipFormat({ ...clipSize(project, WIDTH_PX), bitrate: BITS_PER_S });
}

/** Draws the runs frame by frame and packs them as a file; null when stopped. @throws Error where the browser cannot */
export async function writeClip(
  scene: ClipScene,
  { speed, signal, onProgress }: ClipOptions,
): Promise<Clip | null> {
  const format = await formatFor(scene.project);
  if (format === null) throw new Error(t.noVideo);
  const { width, height } = clipSize(scene.project, WIDTH_PX);
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error(t.noPictures);
  const source = new CanvasSource(canvas, { codec: format.codec, bitrate: BITS_PER_S });
  const target = new BufferTarget();
  const output = new Output({ format: format.container(), target });
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
  if (target.buffer === null) throw new Error(t.empty);
  return { bytes: target.buffer, format, durationS: frames / FRAMES_PER_S };
}
