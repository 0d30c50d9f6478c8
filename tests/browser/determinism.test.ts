import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Answers, Request } from "../../src/jobs/protocol.ts";
import { parseProject } from "../../src/model/parse.ts";
import type { Project } from "../../src/model/project.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { coverageOf } from "../../src/score/coverage.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { recordTrial, runBatch } from "../../src/trial/run.ts";
import { openPage } from "../support/page.ts";
import { top } from "../support/sourceCheck.ts";

const SEED = 20;
const TRIALS = 60;

/** The page's own worker program, as it was built. */
function builtWorker(): string {
  const found = readdirSync(join(top, "dist/app/assets")).filter((name) => name.startsWith("browserWorker"));
  expect(found).toHaveLength(1);
  return `assets/${found[0]}`;
}

const fields = readdirSync(join(top, "fields")).filter((name) => name.endsWith(".json"));

function load(name: string): Project {
  const parsed = parseProject(readFileSync(join(top, "fields", name), "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}

/** A few routines, from everywhere in the list. */
function someRoutines(project: Project) {
  const routines = generateRoutines(project);
  return routines.filter((_, i) => i % Math.ceil(routines.length / 6) === 0);
}

/** Sends requests to the worker inside Chromium; typed arrays come back as plain ones. */
async function inChromium(requests: readonly Request[]): Promise<unknown[]> {
  const worker = builtWorker();
  // Any text of the same server will do as the page: the worker runs without the rest of the application.
  const page = await openPage(worker);
  return page.evaluate(
    async ({ worker, requests }) => {
      const thread = new Worker(`/${worker}`, { type: "module" });
      const plain = (_: string, value: unknown) =>
        ArrayBuffer.isView(value) ? [...(value as Uint8Array)] : value;
      const answers: unknown[] = [];
      for (const request of requests) {
        const reply = await new Promise<{ ok: boolean; answer: unknown; fault: string }>(
          (resolve, reject) => {
            thread.onmessage = (event) => resolve(event.data);
            thread.onerror = (event) => reject(new Error(event.message || "the worker could not be loaded"));
            thread.postMessage(request);
          },
        );
        if (!reply.ok) throw new Error(reply.fault);
        answers.push(JSON.parse(JSON.stringify(reply.answer, plain)));
      }
      thread.terminate();
      return answers;
    },
    { worker, requests },
  );
}

const plainly = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, each) => (ArrayBuffer.isView(each) ? [...(each as Uint8Array)] : each)),
  );

describe("Chromium and Node", () => {
  it.each(fields)("run the same trials, bit for bit: %s", async (name) => {
    const project = load(name);
    const routines = someRoutines(project);
    const requests = routines.flatMap((routine, i): Request[] => {
      const subject = { project, routine };
      const tasks: Request["task"][] = [
        { kind: "stress", seed: SEED, from: 0, to: TRIALS },
        { kind: "record", seed: SEED, index: TRIALS },
        { kind: "coverage" },
      ];
      return tasks.map((task, j) => ({
        id: 3 * i + j,
        key: i,
        subject: j === 0 ? subject : null,
        forget: [],
        task,
      }));
    });
    const answers = await inChromium(requests);
    for (const [i, routine] of routines.entries()) {
      const plan = compileTrial(project, routine);
      const stress: Answers["stress"] = runBatch(plan, SEED, 0, TRIALS);
      expect(answers[3 * i], routine.id).toEqual(plainly(stress));
      expect(answers[3 * i + 1], routine.id).toEqual(plainly(recordTrial(plan, SEED, TRIALS)));
      expect(answers[3 * i + 2], routine.id).toEqual(plainly(coverageOf(project, routine)));
    }
  });
});
