import { type ChildProcess, fork } from "node:child_process";

/** What one library of a comparison is asked for: trials from … to − 1, each `repeats` times. */
export interface SideTask {
  readonly from: number;
  readonly to: number;
  readonly repeats: number;
}

export interface SideAnswer {
  /** Processor time of the whole process for this task, all its threads together, s. */
  readonly cpuS: number;
  /** What the process had used before it, s. */
  readonly startCpuS: number;
  /** Balls delivered, per trial. */
  readonly delivered: readonly number[];
}

/** Runs one trial of one side: the balls delivered. */
export type SideTrial = (index: number) => number;

/** Answers the tasks that the parent process sends, until it disconnects. */
export function serveSide(trial: SideTrial): void {
  process.on("message", ({ from, to, repeats }: SideTask) => {
    const before = process.cpuUsage();
    let delivered: number[] = [];
    for (let n = 0; n < repeats; n++) {
      delivered = Array.from({ length: to - from }, (_, i) => trial(from + i));
    }
    const { user, system } = process.cpuUsage(before);
    const answer: SideAnswer = {
      cpuS: (user + system) / 1e6,
      startCpuS: (before.user + before.system) / 1e6,
      delivered,
    };
    process.send?.(answer);
  });
}

/** A library in a process of its own, so that neither warms up nor slows down the other. */
export class Side {
  private readonly child: ChildProcess;

  /** @param file program that calls `serveSide` when it was started with the argument `name` */
  constructor(file: string, name: string) {
    this.child = fork(file, [name], { stdio: ["ignore", "inherit", "inherit", "ipc"] });
  }

  ask(task: SideTask): Promise<SideAnswer> {
    return new Promise((resolve, reject) => {
      const died = (code: number | null): void => reject(new Error(`the process ended with code ${code}`));
      this.child.once("exit", died);
      this.child.once("message", (answer: SideAnswer) => {
        this.child.off("exit", died);
        resolve(answer);
      });
      this.child.send(task);
    });
  }

  close(): void {
    this.child.removeAllListeners("exit");
    this.child.disconnect();
  }
}
