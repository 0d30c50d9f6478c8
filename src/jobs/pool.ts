import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { faultTexts as t } from "../texts/english/fault.ts";
import type { Gate } from "./gate.ts";
import { KnownKeys } from "./knownKeys.ts";
import type { Answers, Reply, Request, Subject, TaskKind, TaskOf } from "./protocol.ts";
import { SubjectKeys } from "./subjectKeys.ts";
import type { StartThread, Thread } from "./thread.ts";

export interface RunOptions {
  /** Aborting rejects with the signal's reason. A task under way is left to end and its answer dropped. */
  readonly signal?: AbortSignal | undefined;
  /** Goes before all that is not: for what a person is looking at right now. Urgent tasks keep their order. */
  readonly urgent?: boolean;
  /** The task does not start while it is closed; others overtake it. */
  readonly gate?: Gate | undefined;
}

/** What a task is about besides the project. */
type About = Routine | readonly Routine[] | null;

/** A task is tried on this many workers in turn before it counts as the cause of their deaths. */
const ATTEMPTS = 2;

interface Job {
  readonly key: number;
  readonly subject: Subject;
  readonly family: readonly { readonly key: number; readonly subject: Subject }[];
  readonly task: TaskOf<TaskKind>;
  readonly gate: Gate | null;
  readonly urgent: boolean;
  attempts: number;
  settled: boolean;
  /** Forgets the signal. */
  unwatch: () => unknown;
  readonly resolve: (answer: Answers[TaskKind]) => void;
  readonly reject: (reason: unknown) => void;
}

interface Seat {
  readonly thread: Thread;
  readonly known: KnownKeys;
  /** The task under way and the id of its request; null while idle. */
  current: { readonly id: number; readonly job: Job } | null;
}

/**
 * Shares tasks out over a few workers, one task per worker at a time, first come first served. Workers start when first
 * needed and stay. One that dies is replaced, and its task done again once; if that worker dies too, the task rejects
 * with the reason.
 */
export class Pool {
  readonly size: number;
  readonly #start: StartThread;
  readonly #keys = new SubjectKeys();
  readonly #seats: Seat[] = [];
  #waiting: Job[] = [];
  readonly #watched = new WeakMap<AbortSignal, Set<Job>>();
  readonly #gates = new WeakSet<Gate>();
  #nextId = 1;
  #closed = false;

  /** @param size most workers at a time, at least 1 */
  constructor(start: StartThread, size: number) {
    if (!Number.isInteger(size) || size < 1) throw new RangeError(`pool size ${size}: a whole number ≥ 1`);
    this.#start = start;
    this.size = size;
  }

  /**
   * Runs one task in a worker. Project and routine must be plain data, and not change afterwards: workers keep them.
   * @param routine null for a task about the project alone, several for one about a family of them
   * @returns the answer; rejects with the signal's reason, or an Error with what went wrong in the worker
   */
  run<K extends TaskKind>(
    project: Project,
    routine: About,
    task: TaskOf<K>,
    options: RunOptions = {},
  ): Promise<Answers[K]> {
    if (this.#closed) return Promise.reject(new Error("the pool is closed"));
    const { signal } = options;
    if (signal?.aborted) return Promise.reject(signal.reason);
    const answer = new Promise<Answers[TaskKind]>((resolve, reject) => {
      const member = (each: Routine) => ({
        key: this.#keys.keyOf(project, each),
        subject: { project, routine: each },
      });
      const single = isFamily(routine) ? null : routine;
      const job: Job = {
        key: this.#keys.keyOf(project, single),
        subject: { project, routine: single },
        family: isFamily(routine) ? routine.map(member) : [],
        task,
        gate: options.gate ?? null,
        urgent: options.urgent ?? false,
        attempts: 0,
        settled: false,
        unwatch: () => {},
        resolve,
        reject,
      };
      const place = job.urgent ? this.#waiting.findIndex(({ urgent }) => !urgent) : -1;
      if (place >= 0) this.#waiting.splice(place, 0, job);
      else this.#waiting.push(job);
      if (signal) this.#watch(job, signal);
      if (options.gate) this.#heed(options.gate);
      this.#fill();
    });
    // The reply to a task has the type that Answers gives for its kind; see answer.ts.
    return answer as Promise<Answers[K]>;
  }

  /** Ends all workers; what waits or is under way rejects. */
  close(): void {
    this.#closed = true;
    const jobs = [...this.#waiting, ...this.#seats.flatMap((seat) => seat.current?.job ?? [])];
    for (const seat of this.#seats) {
      seat.current = null;
      seat.thread.close();
    }
    this.#seats.length = 0;
    this.#waiting.length = 0;
    for (const job of jobs) fail(job, new Error("the pool is closed"));
  }

  #fill(): void {
    for (let job = this.#next(); job; job = this.#next()) {
      try {
        const seat = this.#seats.find((each) => each.current === null) ?? this.#open();
        if (!seat) return;
        this.#drop(job);
        this.#give(seat, job);
      } catch (fault) {
        // No worker could be started, or the subject cannot be sent.
        this.#drop(job);
        fail(job, fault);
      }
    }
  }

  /** The first task that may start. */
  #next(): Job | undefined {
    return this.#waiting.find(({ gate }) => !gate?.isClosed);
  }

  #open(): Seat | null {
    if (this.#seats.length >= this.size) return null;
    const thread = this.#start({
      reply: (reply) => this.#settle(seat, reply),
      died: (reason) => this.#bury(seat, reason),
    });
    const seat: Seat = { thread, known: new KnownKeys(), current: null };
    this.#seats.push(seat);
    return seat;
  }

  #give(seat: Seat, job: Job): void {
    const id = this.#nextId++;
    const forget: number[] = [];
    const [about, ...family] = [job, ...job.family].map(({ key, subject }) => {
      const use = seat.known.use(key);
      forget.push(...use.forget);
      return { key, subject: use.isNew ? subject : null };
    });
    const { key, subject } = about ?? job;
    const request: Request = { id, key, subject, family, forget, task: job.task };
    job.attempts += 1;
    seat.current = { id, job };
    try {
      seat.thread.post(request);
    } catch (fault) {
      // Nothing was sent, so the worker must not be taken to know the keys.
      for (const each of [job, ...job.family]) seat.known.drop(each.key);
      seat.current = null;
      throw fault;
    }
  }

  #settle(seat: Seat, reply: Reply): void {
    // A reply to anything but the request under way is stale.
    if (seat.current?.id !== reply.id) return;
    const { job } = seat.current;
    seat.current = null;
    if (reply.ok) succeed(job, reply.answer);
    else fail(job, new Error(reply.fault));
    this.#fill();
  }

  #bury(seat: Seat, reason: string): void {
    const place = this.#seats.indexOf(seat);
    if (place < 0) return;
    this.#seats.splice(place, 1);
    const job = seat.current?.job;
    seat.current = null;
    if (job && !job.settled) {
      if (job.attempts < ATTEMPTS) this.#waiting.unshift(job);
      else fail(job, new Error(t.ended(reason)));
    }
    this.#fill();
  }

  /** One listener for all jobs of a signal: a job list may be thousands long. */
  #watch(job: Job, signal: AbortSignal): void {
    const jobs = this.#watched.get(signal) ?? new Set();
    if (!this.#watched.has(signal)) {
      this.#watched.set(signal, jobs);
      const abort = (): void => {
        const gone = new Set(jobs);
        this.#waiting = this.#waiting.filter((each) => !gone.has(each));
        for (const each of gone) fail(each, signal.reason);
      };
      signal.addEventListener("abort", abort, { once: true });
    }
    jobs.add(job);
    job.unwatch = () => jobs.delete(job);
  }

  /** Goes on when a gate opens; one callback for all jobs behind it. */
  #heed(gate: Gate): void {
    if (this.#gates.has(gate)) return;
    this.#gates.add(gate);
    gate.watch(() => this.#fill());
  }

  #drop(job: Job): void {
    const place = this.#waiting.indexOf(job);
    if (place >= 0) this.#waiting.splice(place, 1);
  }
}

function isFamily(about: About): about is readonly Routine[] {
  return Array.isArray(about);
}

function succeed(job: Job, answer: Answers[TaskKind]): void {
  if (job.settled) return;
  job.settled = true;
  job.unwatch();
  job.resolve(answer);
}

function fail(job: Job, reason: unknown): void {
  if (job.settled) return;
  job.settled = true;
  job.unwatch();
  job.reject(reason);
}
