/**
 * Builds what the command and the page are started from. Each build is kept under a name made from its sources, so that
 * one that is there is known to be current, and two builds at a time cannot mix:
 *   dist/node/<hash>/   the command and its workers, for Node
 *   dist/bench/<hash>/  the benchmarks, see tests/bench
 *   dist/app/           the page; dist/app.hash says from which sources
 * Run directly (`npm run build`), it builds the first and the last, whatever is there.
 */
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

export const top = fileURLToPath(new URL("../..", import.meta.url));
const dist = join(top, "dist");

/** A build as old as this is removed by the next one, ms: a process that still runs may start workers from a younger one. */
const OLD_MS = 24 * 3600 * 1000;

const SWAP_ATTEMPTS = 5;

/** Rooms that only the page is made of. */
const PAGE_ROOMS = ["app", "view"];

/** @typedef {{ onBuild?: (what: string) => void, force?: boolean }} BuildOptions */

/**
 * @param {BuildOptions} [options] `onBuild` is told when something has to be built
 * @returns {Promise<string>} the directory with wedgeward.js and worker.js
 */
export function nodeBundle(options = {}) {
  return keyedBundle({
    name: "node",
    sources: sourceFiles(PAGE_ROOMS),
    entries: { wedgeward: "src/cli/wedgeward.ts", worker: "src/jobs/nodeWorker.ts" },
    options,
  });
}

/**
 * @param {Record<string, string>} entries name → source file of each benchmark
 * @returns {Promise<string>} the directory with one file for each, and worker.js
 */
export function benchBundle(entries) {
  const sources = [
    ...sourceFiles(PAGE_ROOMS),
    ...filesIn(join(top, "tests/bench")),
    ...filesIn(join(top, "tests/support")),
    ...filesIn(join(top, "fields")),
  ];
  return keyedBundle({
    name: "bench",
    sources,
    entries: { ...entries, worker: "src/jobs/nodeWorker.ts" },
    options: {},
  });
}

/**
 * @param {BuildOptions} [options]
 * @returns {Promise<string>} the directory of the page
 */
export async function appBundle({ onBuild = () => {}, force = false } = {}) {
  const place = join(dist, "app");
  const mark = join(dist, "app.hash");
  const hash = hashOf([...sourceFiles([]), ...filesIn(join(top, "fields")), join(top, "svelte.config.js")]);
  if (!force && existsSync(mark) && readFileSync(mark, "utf8") === hash && existsSync(place)) return place;
  onBuild("the page");
  const fresh = join(dist, "tmp", `app-${process.pid}`);
  const { build } = await import("vite");
  // The tests run with NODE_ENV "test", which vite would take over: a page that is slower, larger and not what is shipped.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  try {
    await build({
      configFile: join(top, "vite.config.ts"),
      root: join(top, "src/app"),
      logLevel: "warn",
      build: { outDir: fresh, emptyOutDir: true },
    });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
  writeServiceWorker(fresh);
  swap(fresh, place);
  writeFileSync(mark, hash);
  removeOld(join(dist, "tmp"));
  return place;
}

/**
 * Writes the page's service worker, with the names of all its files and a version made from their contents.
 * @param {string} directory of the built page
 */
function writeServiceWorker(directory) {
  const files = filesIn(directory);
  const names = files.map((file) => relative(directory, file).split(sep).join("/")).sort();
  const template = readFileSync(join(top, "src/app/offline/serviceWorker.js"), "utf8");
  const text = template
    .replace("%VERSION%", hashOf([...files, join(top, "src/app/offline/serviceWorker.js")]).slice(0, 16))
    .replace('"%FILES%"', () => names.map((name) => JSON.stringify(name)).join(", "));
  writeFileSync(join(directory, "sw.js"), text);
}

/** @param {{ name: string, sources: readonly string[], entries: Record<string, string>, options: BuildOptions }} what */
async function keyedBundle({ name, sources, entries, options }) {
  const { onBuild = () => {}, force = false } = options;
  const place = join(dist, name, hashOf(sources).slice(0, 16));
  if (!force && existsSync(place)) return place;
  onBuild(name === "node" ? "the command" : name);
  const fresh = join(dist, "tmp", `${name}-${process.pid}`);
  const { build } = await import("vite");
  await build({
    configFile: false,
    root: top,
    logLevel: "warn",
    ssr: { noExternal: true },
    build: {
      ssr: true,
      target: "node20",
      outDir: fresh,
      emptyOutDir: true,
      copyPublicDir: false,
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(Object.entries(entries).map(([key, file]) => [key, join(top, file)])),
        // Module-level constants stay `const`: as `var`, the bundler's default, they cost the trial a third of its speed.
        output: { entryFileNames: "[name].js", topLevelVar: false },
      },
    },
  });
  mkdirSync(join(dist, name), { recursive: true });
  if (force) swap(fresh, place);
  else settle(fresh, place);
  removeOld(join(dist, name), place);
  removeOld(join(dist, "tmp"));
  return place;
}

/**
 * Puts a finished build in its place, unless another process has put the same there meanwhile: something may be loading from that.
 * @param {string} fresh
 * @param {string} place named after what it was built from
 */
function settle(fresh, place) {
  try {
    renameSync(fresh, place);
  } catch (fault) {
    if (!existsSync(place)) throw fault;
    rmSync(fresh, { recursive: true, force: true });
  }
}

/**
 * Puts a finished build in the place of another. A directory cannot be renamed onto a full one, so what is there is moved away
 * first; another process may do the same at the same moment, hence the second try.
 * @param {string} fresh
 * @param {string} place
 */
function swap(fresh, place) {
  const old = `${fresh}-old`;
  for (let attempt = 1; ; attempt++) {
    try {
      if (existsSync(place)) renameSync(place, old);
      renameSync(fresh, place);
      break;
    } catch (fault) {
      if (attempt === SWAP_ATTEMPTS) throw fault;
      rmSync(old, { recursive: true, force: true });
    }
  }
  rmSync(old, { recursive: true, force: true });
}

/**
 * @param {string} directory
 * @param {string} [keep]
 */
function removeOld(directory, keep) {
  for (const entry of readdirSync(directory)) {
    const path = join(directory, entry);
    const isOld = Date.now() - statSync(path).mtimeMs > OLD_MS;
    if (path !== keep && isOld) rmSync(path, { recursive: true, force: true });
  }
}

/** @param {readonly string[]} exceptRooms */
function sourceFiles(exceptRooms) {
  const except = exceptRooms.map((room) => join(top, "src", room) + sep);
  const files = filesIn(join(top, "src")).filter((file) => !except.some((room) => file.startsWith(room)));
  return [...files, join(top, "package.json"), join(top, "package-lock.json"), join(top, "vite.config.ts")];
}

/**
 * @param {string} directory
 * @returns {string[]}
 */
function filesIn(directory) {
  return readdirSync(directory, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

/** @param {readonly string[]} files */
function hashOf(files) {
  const hash = createHash("sha256");
  for (const file of [...files].sort()) {
    const content = readFileSync(file);
    hash.update(`${relative(top, file)}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await nodeBundle({ force: true });
  await appBundle({ force: true });
}
