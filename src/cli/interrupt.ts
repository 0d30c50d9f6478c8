/** Exit code of a command that was stopped: 128 + 2, the number of SIGINT, as shells expect it. */
export const STOPPED = 130;

/** A signal that is aborted by the first Ctrl-C; the second ends the process at once. */
export function interruptSignal(): AbortSignal {
  const controller = new AbortController();
  process.once("SIGINT", () => {
    process.once("SIGINT", () => process.exit(STOPPED));
    controller.abort();
  });
  return controller.signal;
}
