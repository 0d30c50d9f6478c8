/** Until the first answers are there, the network and the processor belong to them, ms. */
const REGISTER_AFTER_MS = 4000;

/** Has the page kept for use without a network (see serviceWorker.js). Where that cannot be, nothing else changes. */
export function keepForOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  setTimeout(() => {
    navigator.serviceWorker.register("./sw.js").catch(() => {
      // A browser that keeps nothing (private window, storage switched off) still runs the page; nor is there a file while developing.
    });
  }, REGISTER_AFTER_MS);
}
