/** Lets the page answer whoever types or points before more is done: resolves in a task of its own. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
