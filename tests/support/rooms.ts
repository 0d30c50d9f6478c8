/**
 * The one table of the rooms of src/: from the bottom up, with the packages a room may use. A room imports from itself
 * and from rooms further up in this list only.
 */
export interface Room {
  readonly name: string;
  /** Numbers in, numbers out: no DOM, no clock, no file, no chance, no function in which engines differ. */
  readonly core: boolean;
  readonly packages: readonly string[];
  /** Rooms below it that it may not import although they are below. */
  readonly apart?: readonly string[];
}

export const ROOMS: readonly Room[] = [
  // The lowest: every room may make a sentence.
  { name: "texts", core: true, packages: [] },
  { name: "num", core: true, packages: [] },
  { name: "geometry", core: true, packages: ["clipper2-ts", "d3-delaunay"] },
  { name: "model", core: true, packages: [] },
  { name: "motion", core: true, packages: [] },
  // Below the trial: a robot that decides on the way plans within its run.
  { name: "plan", core: true, packages: [] },
  { name: "trial", core: true, packages: [] },
  { name: "score", core: true, packages: [] },
  { name: "practice", core: true, packages: [], apart: ["score"] },
  { name: "search", core: true, packages: [] },
  { name: "jobs", core: false, packages: ["node:worker_threads"] },
  { name: "report", core: false, packages: [] },
  { name: "view", core: false, packages: ["pixi.js"] },
  { name: "cli", core: false, packages: ["node:*", "vite"], apart: ["view"] },
  { name: "app", core: false, packages: ["svelte", "idb-keyval", "mediabunny"], apart: ["cli"] },
];

/** What the core may take from Math: exact in every engine, unlike sin, cos, atan2, exp, log, hypot, pow and their kin. */
export const EXACT_MATH: ReadonlySet<string> = new Set([
  "LN2",
  "LOG2E",
  "PI",
  "abs",
  "ceil",
  "clz32",
  "floor",
  "fround",
  "imul",
  "max",
  "min",
  "round",
  "sign",
  "sqrt",
  "trunc",
]);

/** Globals that are no pure function of their arguments, or differ between engines, though the core's types (lib es2023) know them. */
export const IMPURE_GLOBALS: ReadonlySet<string> = new Set([
  "Date",
  "Intl",
  "eval",
  "Function",
  "globalThis",
  "WeakRef",
  "FinalizationRegistry",
  "Atomics",
  "SharedArrayBuffer",
  // Not in lib es2023, named here so that the message is plain.
  "performance",
  "crypto",
  "fetch",
  "process",
  "setTimeout",
  "setInterval",
  "queueMicrotask",
  "requestAnimationFrame",
  "console",
  "window",
  "document",
  "navigator",
  "self",
  "localStorage",
  "indexedDB",
]);

/** Methods whose result depends on the machine's language. */
export const LOCALE_METHODS: ReadonlySet<string> = new Set([
  "toLocaleString",
  "toLocaleLowerCase",
  "toLocaleUpperCase",
  "localeCompare",
]);
