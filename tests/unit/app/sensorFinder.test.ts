import { describe, expect, it } from "vitest";
import { SensorFinder } from "../../../src/app/state/sensorFinder.svelte.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();

describe("finding what sensors are worth", () => {
  it("says what went wrong, and is idle again when it is forgotten", async () => {
    const finder = new SensorFinder({ run: () => Promise.reject(new Error("no worker")) });
    await finder.find(project, 1);
    expect(finder.status).toBe("failed");
    expect(finder.fault).toBe("no worker");
    finder.clear();
    expect(finder.status).toBe("idle");
  });

  it("shows nothing of a job that was cancelled", async () => {
    const finder = new SensorFinder({
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
});
