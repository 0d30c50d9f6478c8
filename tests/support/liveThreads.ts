import { Answerer } from "../../src/jobs/answer.ts";
import type { StartThread } from "../../src/jobs/thread.ts";

/**
 * Workers that do the real work in this thread, each in a turn of its own. `dies` says whether a worker ends instead of
 * answering its nth request; both are counted from 0, workers in the order in which they start.
 */
export function liveThreads(dies: (worker: number, request: number) => boolean = () => false): {
  readonly start: StartThread;
  readonly started: () => number;
} {
  let started = 0;
  const start: StartThread = (events) => {
    const worker = started++;
    const answerer = new Answerer();
    let requests = 0;
    let isClosed = false;
    return {
      post: (request) => {
        const copy = structuredClone(request);
        setImmediate(() => {
          if (isClosed) return;
          if (dies(worker, requests++)) {
            isClosed = true;
            events.died("killed by the test");
          } else {
            void answerer.reply(copy).then((reply) => {
              if (!isClosed) events.reply(reply);
            });
          }
        });
      },
      close: () => {
        isClosed = true;
      },
    };
  };
  return { start, started: () => started };
}
