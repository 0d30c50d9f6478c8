import type { Project } from "../../model/project.ts";
import type { Catalogue } from "../../plan/catalogue.ts";
import type { PlanReply } from "./planWorker.ts";

/** Makes a project's catalogue; rejects with the signal's reason when it is aborted, or with an Error. */
export type Planner = (project: Project, signal: AbortSignal) => Promise<Catalogue>;

/** In a worker of its own, which ends with the work: patterns are tried against the walls for seconds in hard zones. */
export const planInWorker: Planner = (project, signal) => {
  if (signal.aborted) return Promise.reject(signal.reason);
  const worker = new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module" });
  const end = new AbortController();
  const work = new Promise<Catalogue>((resolve, reject) => {
    signal.addEventListener("abort", () => reject(signal.reason), { signal: end.signal });
    worker.onmessage = ({ data }: MessageEvent<PlanReply>) =>
      data.ok ? resolve(data.catalogue) : reject(new Error(data.fault));
    worker.onerror = (event) => reject(new Error(event.message || "the planner could not be loaded"));
    worker.postMessage(project);
  });
  return work.finally(() => {
    end.abort();
    worker.terminate();
  });
};
