import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Request } from "../../src/jobs/protocol.ts";
import { parseProject } from "../../src/model/parse.ts";
import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { catalogueIds } from "../../src/plan/catalogueIds.ts";
import { RoutineMaker } from "../../src/plan/maker.ts";
import { coverageOf } from "../../src/score/coverage.ts";
import { summarise } from "../../src/score/stress.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialBatch } from "../../src/trial/outcome.ts";
import { recordTrial, runBatch } from "../../src/trial/run.ts";
import { GOLDEN_TRIALS, goldenRuns } from "./goldenRuns.ts";
import { top } from "./sourceCheck.ts";

/** The page's own worker, asked inside a browser, and the same asked in Node. */

const SEED = 20;
const TRIALS = 40;
/** Routines of each field. */
const ROUTINES = 4;

/** The worker program as it was built, below the base URL. */
export function builtWorker(): string {
  const found = readdirSync(join(top, "dist/app/assets")).filter((name) => name.startsWith("browserWorker"));
  expect(found).toHaveLength(1);
  return `assets/${found[0]}`;
}

export const fieldNames = readdirSync(join(top, "fields")).filter((name) => name.endsWith(".json"));

export function loadField(name: string): Project {
  const parsed = parseProject(readFileSync(join(top, "fields", name), "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}

/** A few routines, from everywhere in the list. */
function someRoutines(project: Project): readonly Routine[] {
  const maker = new RoutineMaker(project);
  const ids = catalogueIds(project);
  return Array.from({ length: ROUTINES }, (_, part) => {
    // The zone has no room for some.
    for (const id of ids.slice(Math.floor((part * ids.length) / ROUTINES))) {
      const routine = maker.make(id);
      if (routine !== null) return routine;
    }
    throw new Error(`${project.name}: no routine of part ${part}`);
  });
}

/** Trials, a recording and the coverage of each routine. @param firstKey no two projects asked about share a key */
function requestsFor(project: Project, routines: readonly Routine[], firstKey: number): readonly Request[] {
  return routines.flatMap((routine, i): Request[] => {
    const tasks: Request["task"][] = [
      { kind: "stress", seed: SEED, from: 0, to: TRIALS },
      { kind: "record", seed: SEED, index: TRIALS },
      { kind: "coverage" },
    ];
    return tasks.map((task, j) => ({
      id: 3 * (firstKey + i) + j,
      key: firstKey + i,
      subject: j === 0 ? { project, routine } : null,
      forget: [],
      task,
    }));
  });
}

/** What Node says to the requests of one routine, as plain JSON. */
function answersOfNode(project: Project, routine: Routine): readonly unknown[] {
  const plan = compileTrial(project, routine);
  return [runBatch(plan, SEED, 0, TRIALS), recordTrial(plan, SEED, TRIALS), coverageOf(project, routine)].map(
    plainly,
  );
}

export interface Asked {
  readonly requests: readonly Request[];
  /** What Node says to them, and of which field. */
  readonly answers: readonly { readonly name: string; readonly answer: unknown }[];
}

/** Node's part, worked out once for all browsers: routines with their answers, by field. */
const known = new Map<
  string,
  readonly { readonly routine: Routine; readonly answers: readonly unknown[] }[]
>();

/** Requests about so many of each shipped field's routines, at most `ROUTINES`, and Node's answers. */
export function askedOfFields(count: number): Asked {
  const each = fieldNames.map((name, field) => {
    const project = loadField(name);
    const cases =
      known.get(name) ??
      someRoutines(project).map((routine) => ({ routine, answers: answersOfNode(project, routine) }));
    known.set(name, cases);
    const chosen = cases.slice(-count);
    const routines = chosen.map(({ routine }) => routine);
    return {
      requests: requestsFor(project, routines, field * ROUTINES),
      answers: chosen.flatMap(({ answers }) => answers.map((answer) => ({ name, answer }))),
    };
  });
  return {
    requests: each.flatMap(({ requests }) => requests),
    answers: each.flatMap(({ answers }) => answers),
  };
}

/** The golden runs as requests, and their hashes as the file has them, in the same order. */
export function askedOfGolden(): {
  readonly requests: readonly Request[];
  readonly hashes: readonly string[];
} {
  const file: Record<string, string> = JSON.parse(
    readFileSync(join(top, "tests/golden/hashes.json"), "utf8"),
  );
  const runs = goldenRuns();
  expect(runs.map(({ key }) => key).sort()).toEqual(Object.keys(file).sort());
  return {
    requests: runs.map(
      ({ project, routine, seed }, id): Request => ({
        id,
        key: id,
        subject: { project, routine },
        forget: [],
        task: { kind: "stress", seed, from: 0, to: GOLDEN_TRIALS },
      }),
    ),
    hashes: runs.map(({ key }) => file[key] ?? ""),
  };
}

/** The hash of each batch that a page told. */
export function hashesOf(told: readonly unknown[]): readonly string[] {
  return told.map((batch) => summarise([batch as TrialBatch]).hash);
}

function plainly(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, each) => (ArrayBuffer.isView(each) ? [...(each as Uint8Array)] : each)),
  );
}

/** Runs inside the page: sends the requests one after another; typed arrays come back as plain ones. */
export async function askInPage({
  worker,
  requests,
}: {
  worker: string;
  requests: readonly Request[];
}): Promise<unknown[]> {
  const thread = new Worker(`/${worker}`, { type: "module" });
  const plain = (_: string, value: unknown) =>
    ArrayBuffer.isView(value) ? [...(value as Uint8Array)] : value;
  const answers: unknown[] = [];
  for (const request of requests) {
    const reply = await new Promise<{ ok: boolean; answer: unknown; fault: string }>((resolve, reject) => {
      thread.onmessage = (event) => resolve(event.data);
      thread.onerror = (event) => reject(new Error(event.message || "the worker could not be loaded"));
      thread.postMessage(request);
    });
    if (!reply.ok) throw new Error(reply.fault);
    answers.push(JSON.parse(JSON.stringify(reply.answer, plain)));
  }
  thread.terminate();
  return answers;
}
