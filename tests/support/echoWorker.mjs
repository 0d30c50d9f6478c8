/** A worker thread for tests of the thread adapter: it does what the request's seed says. */
import { parentPort } from "node:worker_threads";

parentPort?.on("message", ({ id, task }) => {
  if (task.seed === 1) parentPort?.postMessage({ id, ok: true, answer: { from: task.from } });
  else if (task.seed === 2) throw new Error("a fault nobody caught");
  else process.exit(3);
});
