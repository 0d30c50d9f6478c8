import type { Project } from "../../model/project.ts";
import { type Catalogue, makeCatalogue } from "../../plan/catalogue.ts";

/** What the worker answers: the catalogue, or what went wrong. */
export type PlanReply =
  | { readonly ok: true; readonly catalogue: Catalogue }
  | { readonly ok: false; readonly fault: string };

/** What this file uses of a dedicated worker's global scope; the page's own types (lib dom) do not describe it. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Project>) => void) | null;
  postMessage(reply: PlanReply): void;
}

/** Entry of the worker that makes one project's catalogue. */
const scope = globalThis as unknown as WorkerScope;
scope.onmessage = (event) => {
  try {
    scope.postMessage({ ok: true, catalogue: makeCatalogue(event.data) });
  } catch (fault) {
    scope.postMessage({ ok: false, fault: fault instanceof Error ? fault.message : String(fault) });
  }
};
