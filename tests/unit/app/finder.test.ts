import { describe, expect, it } from "vitest";
import { fixFinder, sensorFinder } from "../../../src/app/state/searches.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();

describe("finding what sensors are worth", () => {
  it("says what went wrong, and is idle again when it is forgotten", async () => {
    const finder = sensorFinder({ run: () => Promise.reject(new Error("no worker")) });
    await finder.find(project, 1);
    expect(finder.status).toBe("failed");
    expect(finder.fault).toBe("no worker");
    finder.clear();
    expect(finder.status).toBe("idle");
  });

  it("shows nothing of a job that was cancelled", async () => {
    const finder = sensorFinder({
      run: (_project, _routine, _task, options) =>
        options?.signal?.aborted ? Promise.reject(new Error("cancelled")) : new Promise(() => {}),
    });
    const done = finder.find(project, 1);
    expect(finder.status).toBe("running");
    finder.work.cancel();
    await done;
    expect(finder.status).toBe("stopped");
    expect(finder.result).toBeNull();
  });

  it("is the same for what to fix: a fault is told, a cancelled search is stopped", async () => {
    const routine = { id: "r", label: "Try", pattern: "Own", params: {}, moves: [] };
    const faulty = fixFinder({ run: () => Promise.reject(new Error("no worker")) });
    await faulty.find(project, routine, 1);
    expect([faulty.status, faulty.fault]).toEqual(["failed", "no worker"]);
    faulty.clear();
    expect(faulty.status).toBe("idle");
  });
});
