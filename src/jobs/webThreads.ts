import { faultTexts as t } from "../texts/english/fault.ts";
import { spokenLanguage } from "../texts/language.ts";
import type { Reply } from "./protocol.ts";
import type { StartThread } from "./thread.ts";

/** Workers of this page. */
export const webThreads: StartThread = (events) => {
  // Its name is the language in which it says what routines and changes are.
  const worker = new Worker(new URL("./browserWorker.ts", import.meta.url), {
    type: "module",
    name: spokenLanguage(),
  });
  let isOver = false;
  const die = (reason: string): void => {
    if (isOver) return;
    isOver = true;
    worker.terminate();
    events.died(reason);
  };
  worker.onmessage = (event: MessageEvent<Reply>) => {
    if (!isOver) events.reply(event.data);
  };
  // A worker whose file cannot be loaded gives an error event without a message.
  worker.onerror = (event) => die(event.message || t.notLoaded);
  worker.onmessageerror = () => die(t.unreadable);
  return {
    post: (request) => worker.postMessage(request),
    close: () => {
      isOver = true;
      worker.terminate();
    },
  };
};

/** Workers worth having on this machine: one core is left to the page, which also draws. */
export function webPoolSize(cores = navigator.hardwareConcurrency): number {
  return Math.min(Math.max(1, cores - 1), MOST_WORKERS);
}

/** Each worker compiles and warms up the engine on its own: with more, a short job spends its time on that. */
const MOST_WORKERS = 6;
