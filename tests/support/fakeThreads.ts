import type { Reply, Request } from "../../src/jobs/protocol.ts";
import type { StartThread, ThreadEvents } from "../../src/jobs/thread.ts";

/** A worker that answers only when the test says so. */
export class FakeThread {
  readonly received: Request[] = [];
  isClosed = false;
  readonly #events: ThreadEvents;

  constructor(events: ThreadEvents) {
    this.#events = events;
  }

  /** The request last received. */
  get request(): Request {
    const last = this.received.at(-1);
    if (!last) throw new Error("nothing received yet");
    return last;
  }

  reply(reply: Reply): void {
    this.#events.reply(reply);
  }

  die(reason: string): void {
    this.#events.died(reason);
  }
}

/**
 * Threads that stay in this one; `onPost` sees each request when it is sent, and may answer at once or later.
 */
export function fakeThreads(onPost: (thread: FakeThread, request: Request) => void = () => {}): {
  readonly start: StartThread;
  readonly threads: FakeThread[];
} {
  const threads: FakeThread[] = [];
  const start: StartThread = (events) => {
    const thread = new FakeThread(events);
    threads.push(thread);
    return {
      post: (request) => {
        // What cannot be sent to a real worker cannot be sent here either.
        const copy = structuredClone(request);
        thread.received.push(copy);
        onPost(thread, copy);
      },
      close: () => {
        thread.isClosed = true;
      },
    };
  };
  return { start, threads };
}
