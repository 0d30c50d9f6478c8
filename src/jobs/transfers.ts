import type { Reply } from "./protocol.ts";

/** The buffers of a reply that can be handed over instead of copied. The worker does not use an answer again. */
export function transfersOf(reply: Reply): ArrayBuffer[] {
  return reply.ok && typeof reply.answer === "object" && reply.answer !== null ? buffersIn(reply.answer) : [];
}

/** Answers are plain objects with typed arrays at most one object deep. */
function buffersIn(value: object): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  for (const part of Object.values(value).flatMap((each) => [each, ...partsOf(each)])) {
    if (ArrayBuffer.isView(part) && part.buffer instanceof ArrayBuffer) found.add(part.buffer);
  }
  return [...found];
}

function partsOf(value: unknown): unknown[] {
  const isPlain = typeof value === "object" && value !== null && !ArrayBuffer.isView(value);
  return isPlain ? Object.values(value) : [];
}
