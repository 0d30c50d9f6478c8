import { isLanguage, speak } from "../texts/language.ts";
import { Answerer } from "./answer.ts";
import type { Reply, Request } from "./protocol.ts";
import { transfersOf } from "./transfers.ts";

/** What this file uses of a dedicated worker's global scope; the page's own types (lib dom) do not describe it. */
interface WorkerScope {
  /** The language to speak; see webThreads.ts. */
  readonly name: string;
  onmessage: ((event: MessageEvent<Request>) => Promise<void>) | null;
  postMessage(reply: Reply, transfer: readonly ArrayBuffer[]): void;
}

/** Entry of a worker in the browser. */
const scope = globalThis as unknown as WorkerScope;
const answerer = new Answerer();
// Where its texts cannot be fetched the worker speaks English: a routine's name is no reason to give no routine.
const ready = isLanguage(scope.name) ? speak(scope.name).catch(() => {}) : Promise.resolve();
scope.onmessage = async (event) => {
  await ready;
  const reply = await answerer.reply(event.data);
  scope.postMessage(reply, transfersOf(reply));
};
