import type { Issue, Parsed } from "../../model/issue.ts";
import { type ProjectFile, parseProjectFile } from "../../model/parse.ts";
import { linkTexts as t } from "../../texts/english/link.ts";
import { LINK_KEY } from "./linkKey.ts";

/** What a link opens besides the project: a routine and one of its runs. */
export interface Shown {
  /** Id of the routine; "" for the best. */
  readonly routine: string;
  readonly seed: number;
  readonly run: number;
  readonly timeS: number;
}

export interface Linked {
  readonly file: ProjectFile;
  readonly shown: Shown;
}

/** Longest fragment read, characters, and the most it may unpack to, bytes: a bomb of zeros must not fill the memory. */
const MAX_PACKED = 400_000;
const MAX_TEXT_BYTES = 1_000_000;
const MAX_RUN = 4_294_967_295;

/** The fragment that carries a project and what is on show: deflated JSON in base64url. */
export async function linkHash(text: string, shown: Shown): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify({ shown, file: text }));
  const packed = await collect(stream(bytes).pipeThrough(new CompressionStream("deflate-raw")), Infinity);
  let binary = "";
  for (const byte of packed) binary += String.fromCharCode(byte);
  return LINK_KEY + btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** Reads a link's fragment, checked like any file. Never throws. */
export async function readLink(hash: string): Promise<Parsed<Linked>> {
  const content = await unpack(hash);
  if (typeof content === "string") return { ok: false, issues: [damaged(content)] };
  const { file, shown } = content as { file?: unknown; shown?: unknown };
  if (typeof file !== "string") return { ok: false, issues: [damaged(t.holdsNone)] };
  const parsed = parseProjectFile(file);
  if (!parsed.ok) return parsed;
  const read = readShown(shown);
  return read.ok ? { ok: true, value: { file: parsed.value, shown: read.value } } : read;
}

function readShown(value: unknown): Parsed<Shown> {
  const shown = (typeof value === "object" && value !== null ? value : {}) as Readonly<
    Record<string, unknown>
  >;
  const issues: Issue[] = [];
  const number = (key: string, max: number, whole: boolean): number => {
    const found = shown[key] ?? 0;
    const fits =
      typeof found === "number" && found >= 0 && found <= max && (!whole || Number.isInteger(found));
    if (fits) return found;
    const got = typeof found === "number" ? String(found) : t.noNumber;
    issues.push({
      code: "bad-link",
      path: `shown.${key}`,
      message: t.badRun,
      got,
      expected: t.range(max),
    });
    return 0;
  };
  const routine = typeof shown.routine === "string" ? shown.routine.slice(0, 200) : "";
  const seed = number("seed", Number.MAX_SAFE_INTEGER, true);
  const run = number("run", MAX_RUN, true);
  const timeS = number("timeS", 36_000, false);
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: { routine, seed, run, timeS } };
}

/** The content, or a sentence about why there is none. */
async function unpack(hash: string): Promise<object | string> {
  if (hash.length > MAX_PACKED) return t.tooLong;
  try {
    const binary = atob(hash.slice(LINK_KEY.length).replaceAll("-", "+").replaceAll("_", "/"));
    const packed = Uint8Array.from(binary, (char) => char.charCodeAt(0));
    const unpacked = stream(packed).pipeThrough(new DecompressionStream("deflate-raw"));
    const bytes = await collect(unpacked, MAX_TEXT_BYTES);
    const content: unknown = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
    return typeof content === "object" && content !== null ? content : t.holdsNone;
  } catch (reason) {
    return reason instanceof TooLarge ? reason.message : t.damaged;
  }
}

class TooLarge extends Error {}

function stream(bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
  return new Blob([bytes]).stream();
}

async function collect(from: ReadableStream<Uint8Array>, maxBytes: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let size = 0;
  const reader = from.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (size > maxBytes) {
      await reader.cancel();
      throw new TooLarge(t.tooLarge);
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function damaged(what: string): Issue {
  return {
    code: "bad-link",
    path: "",
    message: t.badLink(what),
    got: t.afterHash,
    expected: t.aLink,
  };
}
