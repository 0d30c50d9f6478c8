import type { TestProject } from "vitest/node";
import { nodeBundle } from "../../src/cli/build.mjs";

/** Global set-up of the projects that run the built command: builds it when it is not there or old. */
export default async function setup(project: TestProject): Promise<void> {
  project.provide("nodeBundle", await nodeBundle());
}

declare module "vitest" {
  export interface ProvidedContext {
    /** Directory with wedgeward.js and worker.js. */
    readonly nodeBundle: string;
  }
}
