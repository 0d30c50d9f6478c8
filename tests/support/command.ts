import { type ChildProcess, spawn } from "node:child_process";
import { afterAll } from "vitest";
import { top } from "./sourceCheck.ts";

export interface Ended {
  /** null when a signal ended the process. */
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Running {
  readonly child: ChildProcess;
  /** Resolves when what was printed so far, both streams together, matches. */
  printed(pattern: RegExp): Promise<RegExpExecArray>;
  readonly ended: Promise<Ended>;
}

/** Those that have not ended: where a test fails, nobody stops what it started. */
const alive = new Set<ChildProcess>();
afterAll(() => {
  for (const child of alive) child.kill("SIGKILL");
});

/** Starts the `wedgeward` command as a user would, without a terminal. */
export function startCommand(args: readonly string[], directory = top): Running {
  const child = spawn(process.execPath, [`${directory}src/cli/launch.mjs`, ...args], { cwd: directory });
  alive.add(child);
  let stdout = "";
  let stderr = "";
  const watchers = new Set<() => void>();
  const heard = (): void => {
    for (const watch of watchers) watch();
  };
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    stdout += text;
    heard();
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    stderr += text;
    heard();
  });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => {
      alive.delete(child);
      resolve({ code, stdout, stderr });
    });
  });
  const printed = (pattern: RegExp): Promise<RegExpExecArray> =>
    new Promise((resolve, reject) => {
      const watch = (): void => {
        const match = pattern.exec(stdout + stderr);
        if (match) resolve(match);
      };
      watchers.add(watch);
      watch();
      void ended.then(() => reject(new Error(`ended without printing ${pattern}: ${stdout}${stderr}`)));
    });
  return { child, printed, ended };
}

/** Runs the command to its end. */
export const runCommand = (...args: readonly string[]): Promise<Ended> => startCommand(args).ended;

/** Runs the command, which must end well and print one JSON object and nothing else. */
export async function runForJson<T>(...args: readonly string[]): Promise<T> {
  const { code, stdout, stderr } = await runCommand(...args, "--json");
  if (code !== 0 || stderr !== "") throw new Error(`exit code ${code}: ${stderr}${stdout}`);
  return JSON.parse(stdout) as T;
}

/** Stops a command with Ctrl-C once it is at work; a slow machine gets more time to come that far. */
export async function stoppedCommand(args: readonly string[]): Promise<Ended> {
  for (let waitMs = 3000; ; waitMs *= 3) {
    const running = startCommand(args);
    await new Promise((resolve) => setTimeout(resolve, waitMs));
    running.child.kill("SIGINT");
    const ended = await running.ended;
    // Ended by the signal itself: it had not begun to listen yet.
    if (ended.code !== null || waitMs > 60_000) return ended;
  }
}
