import type { SerializedError } from "vitest";
import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with one plain line that any CI can read. */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      // A file that could not be loaded, or whose hooks failed, holds no failed test of its own.
      if (module.state() === "failed" && [...module.children.allTests("failed")].length === 0) count.failed++;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed") count.passed++;
        else if (state === "failed") count.failed++;
        else count.skipped++;
      }
    }
    console.log(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  }
}
