#!/usr/bin/env node
/**
 * `wedgeward …` and `npm start`: builds what is missing or older than the sources, then runs it in this process, so that
 * signals, streams and the exit code are the command's own.
 */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { appBundle, nodeBundle } from "./build.mjs";

const onBuild = (/** @type {string} */ what) => {
  if (process.stderr.isTTY) process.stderr.write(`Building ${what} …\n`);
};
try {
  const bundle = await nodeBundle({ onBuild });
  // Only the command that serves the page needs it.
  if (process.argv[2] === "start") await appBundle({ onBuild });
  await import(pathToFileURL(join(bundle, "wedgeward.js")).href);
} catch (fault) {
  process.stderr.write(
    `wedgeward: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`,
  );
  process.exitCode = 1;
}
