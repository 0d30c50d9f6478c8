import { Answerer } from "./answer.ts";
import type { Reply, Request } from "./protocol.ts";
import { transfersOf } from "./transfers.ts";

/** What this file uses of a dedicated worker's global scope; the page's own types (lib dom) do not describe it. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Request>) => Promise<void>) | null;
  postMessage(reply: Reply, transfer: readonly ArrayBuffer[]): void;
}

/** Entry of a worker in the browser. */
const scope = globalThis as unknown as WorkerScope;
const answerer = new Answerer();
scope.onmessage = async (event) => {
  const reply = await answerer.reply(event.data);
  scope.postMessage(reply, transfersOf(reply));
};
