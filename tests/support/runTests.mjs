/**
 * `npm test`: lint, types, builds, then every test. Ends with one plain line "N passed, N failed, N skipped", in which
 * each of the steps before the tests counts as one. Arguments go to vitest: `npm test -- tests/unit/jobs`.
 */
import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("../..", import.meta.url));
const bin = (/** @type {string} */ name) => `${top}node_modules/.bin/${name}`;
const LAST_LINE = /^(\d+) passed, (\d+) failed, (\d+) skipped$/;

const STEPS = [
  { name: "lint", command: bin("biome"), args: ["check", "--error-on-warnings", "."] },
  { name: "types", command: bin("svelte-check"), args: ["--fail-on-warnings", "--output", "human"] },
  { name: "types of the core", command: bin("tsc"), args: ["-p", "tests/support/tsconfig.core.json"] },
  { name: "build", command: process.execPath, args: ["src/cli/build.mjs"] },
];

const count = { passed: 0, failed: 0, skipped: 0 };
// Side by side: each of them keeps one core busy at most.
const ends = await Promise.all(STEPS.map((step) => run(step.command, step.args, () => {})));
for (const [index, step] of STEPS.entries()) {
  const { code, output } = ends[index] ?? { code: 1, output: "" };
  console.log(`${code === 0 ? "ok    " : "FAILED"} ${step.name}`);
  if (code !== 0) console.log(output);
  count[code === 0 ? "passed" : "failed"]++;
  // Tests of an old build would prove nothing.
  if (code !== 0 && step.name === "build") finish();
}
await runVitest(process.argv.slice(2));
finish();

/** @param {readonly string[]} files */
async function runVitest(files) {
  let found = false;
  const args = ["run", "--reporter=default", "--reporter=./tests/support/plainReporter.ts", ...files];
  const { code } = await run(bin("vitest"), args, (line) => {
    const match = LAST_LINE.exec(line);
    if (!match) {
      console.log(line);
      return;
    }
    found = true;
    count.passed += Number(match[1]);
    count.failed += Number(match[2]);
    count.skipped += Number(match[3]);
  });
  if (code !== 0 && (!found || count.failed === 0)) count.failed++;
}

/**
 * @param {string} command
 * @param {readonly string[]} args
 * @param {(line: string) => void} onLine
 * @returns {Promise<{ code: number, output: string }>}
 */
function run(command, args, onLine) {
  return new Promise((resolve) => {
    const env = process.stdout.isTTY ? { ...process.env, FORCE_COLOR: "1" } : process.env;
    const child = spawn(command, args, { cwd: top, env, stdio: ["ignore", "pipe", "pipe"] });
    /** @type {string[]} */
    const lines = [];
    for (const stream of [child.stdout, child.stderr]) {
      createInterface({ input: stream }).on("line", (line) => {
        lines.push(line);
        onLine(line);
      });
    }
    child.on("error", (fault) => resolve({ code: 1, output: String(fault) }));
    child.on("close", (code) => resolve({ code: code ?? 1, output: lines.join("\n") }));
  });
}

function finish() {
  console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  process.exit(count.failed === 0 ? 0 : 1);
}
