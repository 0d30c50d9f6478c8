import { availableParallelism } from "node:os";
import { main } from "./main.ts";
import { endQuietlyWhenNobodyReads, FAULT } from "./output.ts";

/** Entry of the bundled command: see launch.mjs. */
endQuietlyWhenNobodyReads();
try {
  process.exitCode = await main(process.argv.slice(2), availableParallelism());
} catch (fault) {
  process.stderr.write(
    `wedgeward: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`,
  );
  process.exitCode = FAULT;
}
