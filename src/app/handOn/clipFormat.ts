import {
  canEncodeVideo,
  Mp4OutputFormat,
  type OutputFormat,
  type VideoCodec,
  WebMOutputFormat,
} from "mediabunny";

/** How a clip is packed. */
export interface ClipFormat {
  readonly codec: VideoCodec;
  readonly name: "MP4" | "WebM";
  readonly type: "video/mp4" | "video/webm";
  readonly ending: "mp4" | "webm";
  readonly container: () => OutputFormat;
}

export interface ClipMeasures {
  readonly width: number;
  readonly height: number;
  readonly bitrate: number;
}

const mp4 = {
  codec: "avc",
  name: "MP4",
  type: "video/mp4",
  ending: "mp4",
  container: () => new Mp4OutputFormat(),
} as const satisfies ClipFormat;

const webm = (codec: "vp9" | "vp8"): ClipFormat => ({
  codec,
  name: "WebM",
  type: "video/webm",
  ending: "webm",
  container: () => new WebMOutputFormat(),
});

/** MP4 first: what phones, projectors and slides play. Browsers without an encoder for it can mostly write WebM. */
const FORMATS: readonly ClipFormat[] = [mp4, webm("vp9"), webm("vp8")];

/** The first kind of file this browser can write in that size; null where it can write none. */
export async function clipFormat(measures: ClipMeasures): Promise<ClipFormat | null> {
  if (typeof VideoEncoder === "undefined") return null;
  for (const format of FORMATS) if (await canEncodeVideo(format.codec, measures)) return format;
  return null;
}
