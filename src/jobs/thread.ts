import type { Reply, Request } from "./protocol.ts";

/** One worker as the pool sees it. */
export interface Thread {
  /** @throws DataCloneError when the request holds what cannot be sent, such as a function or a proxy. */
  post(request: Request): void;
  /** Ends the worker at once, whatever it is doing; no event follows. */
  close(): void;
}

export interface ThreadEvents {
  reply(reply: Reply): void;
  /** The worker is gone and will not answer any more; reported at most once. */
  died(reason: string): void;
}

export type StartThread = (events: ThreadEvents) => Thread;
