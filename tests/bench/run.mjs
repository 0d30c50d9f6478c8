/**
 * `npm run bench`: runs the benchmarks in this directory, each in a process of its own so that none warms up or slows
 * down another, and prints a table. `npm run bench -- trials` runs those whose names contain one of the words;
 * `npm run bench -- memory --trials=100000` also passes the flag on to them.
 * A benchmark is a file NAME.bench.ts that exports `bench(): Promise<readonly BenchRow[]>` (see row.ts).
 */
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { availableParallelism, cpus } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { benchBundle } from "../../src/cli/build.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const inside = join(here, "inside.mjs");
const wanted = process.argv.slice(2).filter((word) => !word.startsWith("--"));
/** `--trials=N` and the like, for the benchmarks that know them. */
const flags = process.argv.slice(2).filter((word) => word.startsWith("--"));
const all = readdirSync(here)
  .filter((file) => file.endsWith(".bench.ts"))
  .map((file) => file.replace(/\.bench\.ts$/, ""));
const names = all.filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)));
if (names.length === 0) {
  console.error(`No benchmark is called ${wanted.join(" or ")}.`);
  process.exit(2);
}
// All of them, whichever are wanted: a bundle is kept under a name made from the sources alone.
const bundle = await benchBundle(
  Object.fromEntries(all.map((name) => [name, `tests/bench/${name}.bench.ts`])),
);
console.log(
  `${cpus()[0]?.model ?? "unknown processor"}, ${availableParallelism()} cores, Node ${process.version}`,
);
for (const name of names) {
  const output = execFileSync(process.execPath, [inside, join(bundle, `${name}.js`), ...flags], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  /** @type {import("./row.ts").BenchRow[]} */
  const rows = JSON.parse(output);
  const width = Math.max(...rows.map(({ what }) => what.length));
  console.log(`\n${name}`);
  for (const { what, value, unit, rounds, lowest, highest } of rows) {
    const spread = rounds > 1 ? `  (median of ${rounds}; ${shown(lowest)} to ${shown(highest)})` : "";
    console.log(`  ${what.padEnd(width)}  ${shown(value).padStart(8)} ${unit}${spread}`);
  }
}

/** @param {number} value three significant digits, thousands marked */
function shown(value) {
  return Number(value.toPrecision(3)).toLocaleString("en-GB", { maximumFractionDigits: 3 });
}
