import { fileURLToPath } from "node:url";
import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";
import { directImports } from "./tests/support/directImports.ts";

const here = fileURLToPath(new URL(".", import.meta.url));

/**
 * What does nothing of use here when it is loaded, and would come along unused: half of clipper2-ts, which does not say so,
 * and what pixi.js signs up for in case someone draws sprite sheets, videos or masks.
 */
const treeshake = {
  moduleSideEffects: [
    {
      test: /[\\/]node_modules[\\/](clipper2-ts[\\/]|pixi\.js[\\/]lib[\\/](spritesheet|index\.))/,
      sideEffects: false,
    },
  ],
};

/**
 * Puts all that a module cannot do without into one file, by the file's name and the module it begins with: what the page needs
 * before it can do anything, what ranks, what runs trials. The bundler would cut them along who else uses what, into some
 * hundred: each packed by itself, they weigh 20 kB more and take more journeys.
 */
function wholeChunks(chunks: Readonly<Record<string, string>>) {
  /** Of this build; the graph is complete when its first module is asked about. */
  let places: Map<string, string> | null = null;
  const nameOf = (id: string, graph: Graph): string | null => {
    if (places === null) {
      places = new Map();
      for (const [name, from] of Object.entries(chunks)) place(places, graph, here + from, name);
    }
    return places.get(id) ?? null;
  };
  return { groups: [{ name: nameOf, debugName: Object.keys(chunks).join(", ") }] };
}

interface Graph {
  getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null;
}

/** All that a module of ours cannot do without, unless it has its place already. */
function place(places: Map<string, string>, graph: Graph, id: string, name: string): void {
  if (places.has(id) || id.includes("pixi.js")) return;
  const info = graph.getModuleInfo(id);
  if (info === null) return;
  places.set(id, name);
  for (const each of info.importedIds) place(places, graph, each, name);
}

interface Needs {
  /** Set-ups that run once, before all files. */
  readonly needs?: readonly string[];
  readonly slow?: boolean;
  /** Whether files that run in one worker share the modules they load, as trials in a worker of the program do. */
  readonly shared?: boolean;
}

/** One test project: its files, and what it needs before it starts. */
function suite(name: string, { needs = [], slow = false, shared = false }: Needs = {}) {
  return {
    extends: true as const,
    // Here, not for the page, which the browser tests may have to build.
    plugins: [directImports()],
    test: {
      name,
      isolate: !shared,
      include: [`tests/${name}/**/*.test.ts`],
      globalSetup: needs.map((need) => `tests/support/${need}.setup.ts`),
      setupFiles: ["tests/support/console.setup.ts"],
      testTimeout: slow ? 240_000 : 30_000,
      hookTimeout: slow ? 240_000 : 30_000,
      // Until what is waited for holds, as long as for the browser's own waiting; the default of 1 s is a stopwatch.
      expect: { poll: { timeout: slow ? 180_000 : 30_000 } },
    },
  };
}

export default defineConfig({
  root: process.env.VITEST ? here : `${here}src/app`,
  base: "./",
  cacheDir: `${here}node_modules/.vite`,
  plugins: [svelte({ configFile: `${here}svelte.config.js` })],
  // Module-level constants stay `const`: as `var`, the bundler's default, they cost the trial a third of its speed.
  worker: {
    format: "es",
    rolldownOptions: {
      treeshake,
      output: { topLevelVar: false, codeSplitting: wholeChunks({ trials: "src/jobs/browserWorker.ts" }) },
    },
  },
  build: {
    outDir: `${here}dist/app`,
    emptyOutDir: true,
    target: "es2022",
    // What else a late part needs is fetched when it asks for it: naming all that ahead takes 1.4 kB of the first load. The drawing does not wait.
    modulePreload: { resolveDependencies: (file, needs) => (file.includes("zoneView") ? needs : []) },
    // pixi.js alone is above the default of 500 kB.
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      treeshake,
      output: { codeSplitting: wholeChunks({ first: "src/app/main.ts", race: "src/app/state/openRace.ts" }) },
    },
  },
  server: { fs: { allow: [here] } },
  test: {
    // All cores: the default leaves one idle, on two cores half the machine.
    maxWorkers: "100%",
    projects: [
      suite("unit", { shared: true }),
      suite("property", { slow: true }),
      suite("published", { shared: true }),
      suite("reference"),
      suite("golden", { needs: ["built"], slow: true }),
      suite("cli", { needs: ["built"], slow: true }),
      suite("browser", { needs: ["built", "browser"], slow: true }),
    ],
  },
});
