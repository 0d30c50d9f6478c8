import type { Answers, Reply, Request } from "../../src/jobs/protocol.ts";
import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { LOSS_REASONS } from "../../src/trial/outcome.ts";

/** A project with as much in it as a ranking looks at, and routines that stand for nothing. */
export const bareProject = {
  name: "a zone",
  rules: { timeLimitS: 60 },
  robot: { drive: { topSpeedMmPerS: 200, accelMmPerS2: 400 } },
} as Project;

export const bareRoutine = (id: string, waitS = 1): Routine => ({
  id,
  pattern: "own",
  label: id,
  params: {},
  moves: [{ kind: "wait", durationS: waitS }],
});

/** Answers a request as if each trial delivered `delivered(index)` of `balls` balls; all others were never touched. */
export function fakeReply(request: Request, balls: number, delivered: (index: number) => number): Reply {
  const { id, task } = request;
  switch (task.kind) {
    case "coverage":
      return { id, ok: true, answer: { coverageFrac: 0.5 } as Answers["coverage"] };
    case "routines":
      return { id, ok: true, answer: task.ids.map((name) => bareRoutine(name)) };
    case "fates":
    case "failings":
    case "blind-spots":
    case "sure-coverage":
    case "sure-share":
    case "losses":
    case "changes":
    case "parts":
    case "factors":
    case "known-balls":
    case "push-field":
    case "response":
      return { id, ok: false, fault: `nothing to say about ${task.kind}` };
    case "record":
      return { id, ok: false, fault: "nothing to record" };
    case "all-known":
    case "family":
    case "stress": {
      const trials = task.to - task.from;
      const counts = Uint8Array.from({ length: trials }, (_, i) => delivered(task.from + i));
      const losses = new Float64Array(LOSS_REASONS.length);
      losses[LOSS_REASONS.indexOf("never-touched")] = counts.reduce((sum, count) => sum + balls - count, 0);
      const answer: Answers["stress"] = {
        from: task.from,
        to: task.to,
        delivered: counts,
        timeS: new Float64Array(trials).fill(30),
        points: Float64Array.from(counts),
        losses,
        hashLow: task.from + 1,
        hashHigh: task.to,
        jams: 0,
        stalls: 0,
      };
      if (task.kind === "family") return { id, ok: true, answer: (request.family ?? []).map(() => answer) };
      return { id, ok: true, answer };
    }
    default:
      return task satisfies never;
  }
}
