import { Worker } from "node:worker_threads";
import { faultTexts as t } from "../texts/english/fault.ts";
import type { Reply } from "./protocol.ts";
import type { StartThread } from "./thread.ts";

/**
 * Workers as threads of this Node process.
 *
 * @param entry file URL of the bundled nodeWorker
 */
export function nodeThreads(entry: URL): StartThread {
  return (events) => {
    const worker = new Worker(entry);
    let isOver = false;
    const die = (reason: string): void => {
      if (isOver) return;
      isOver = true;
      void worker.terminate();
      events.died(reason);
    };
    worker.on("message", (reply: Reply) => {
      if (!isOver) events.reply(reply);
    });
    worker.on("error", (fault: unknown) => die(fault instanceof Error ? fault.message : String(fault)));
    worker.on("messageerror", () => die(t.unreadable));
    worker.on("exit", (code) => die(`exit code ${code}`));
    return {
      post: (request) => worker.postMessage(request),
      close: () => {
        isOver = true;
        void worker.terminate();
      },
    };
  };
}
