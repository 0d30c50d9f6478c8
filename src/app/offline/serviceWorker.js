/**
 * Keeps the whole page in the browser, so that it opens without a network after the first visit. The build puts the
 * names of all files and a version made from their contents in the place of the two marked texts (cli/build.mjs).
 *
 * A new version waits until no page of the old one is open: a page never gets files of two versions.
 */

/** @typedef {{ request: Request, waitUntil(work: Promise<unknown>): void, respondWith(answer: Promise<Response>): void }} WorkerEvent */
/** @typedef {{ addEventListener(kind: string, on: (event: WorkerEvent) => void): void, clients: { claim(): Promise<void> }, location: Location }} OfflineScope */

/** What this file uses of a service worker's global scope; the page's own types do not describe it. */
const scope = /** @type {OfflineScope} */ (/** @type {unknown} */ (self));
const CACHE = "wedgeward-%VERSION%";
/** @type {readonly string[]} */
const FILES = ["%FILES%"];

scope.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(FILES.map((file) => new Request(`./${file}`, { cache: "no-cache" })))),
  );
});

scope.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => name.startsWith("wedgeward-") && name !== CACHE)
            .map((name) => caches.delete(name)),
        ),
      )
      .then(() => scope.clients.claim()),
  );
});

scope.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  const base = new URL("./", scope.location.href);
  if (event.request.method !== "GET" || !url.href.startsWith(base.href)) return;
  const file = url.pathname.slice(base.pathname.length) || "index.html";
  if (!FILES.includes(file)) return;
  event.respondWith(
    caches
      .open(CACHE)
      .then((cache) => cache.match(`./${file}`))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
