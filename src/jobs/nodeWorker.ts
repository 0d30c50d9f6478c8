import { parentPort } from "node:worker_threads";
import { Answerer } from "./answer.ts";
import type { Request } from "./protocol.ts";
import { transfersOf } from "./transfers.ts";

/** Entry of a worker thread in Node. */
const port = parentPort;
if (!port) throw new Error("nodeWorker runs in a worker thread only");
const answerer = new Answerer();
port.on("message", async (request: Request) => {
  const reply = await answerer.reply(request);
  port.postMessage(reply, transfersOf(reply));
});
