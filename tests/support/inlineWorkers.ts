import { Answerer } from "../../src/jobs/answer.ts";
import type { Workers } from "../../src/jobs/catalogue.ts";
import type { Reply, Request, TaskKind } from "../../src/jobs/protocol.ts";
import { SubjectKeys } from "../../src/jobs/subjectKeys.ts";
import type { Routine } from "../../src/model/routine.ts";

/**
 * Workers that answer in this thread, one task after the other; `order` says which of the waiting ones comes next, as more
 * or fewer workers would change it.
 *
 * @param onTask sees each task before it is answered
 */
export function inlineWorkers(
  order: "first" | "last" = "first",
  onTask: (kind: TaskKind) => void = () => {},
): Workers {
  const answerer = new Answerer();
  const keys = new SubjectKeys();
  const waiting: (() => Promise<void>)[] = [];
  let id = 0;
  const next = (): void => {
    void (order === "first" ? waiting.shift() : waiting.pop())?.();
  };
  const run = (
    project: Parameters<Workers["run"]>[0],
    about: Parameters<Workers["run"]>[1],
    task: Request["task"],
    options: { readonly signal?: AbortSignal | undefined } = {},
  ): Promise<unknown> =>
    new Promise((resolve, reject) => {
      waiting.push(async () => {
        if (options.signal?.aborted) return reject(options.signal.reason);
        onTask(task.kind);
        if (options.signal?.aborted) return reject(options.signal.reason);
        const told = (routine: Routine | null) => ({
          key: keys.keyOf(project, routine),
          subject: { project, routine },
        });
        const members = [about].flat().filter((each) => each !== null);
        const isFamily = Array.isArray(about);
        const reply: Reply = await answerer.reply({
          id: id++,
          ...told(isFamily ? null : (members[0] ?? null)),
          family: isFamily ? members.map(told) : [],
          forget: [],
          task,
        });
        if (reply.ok) resolve(structuredClone(reply.answer));
        else reject(new Error(reply.fault));
      });
      setTimeout(next, 0);
    });
  return { run: run as Workers["run"] };
}
