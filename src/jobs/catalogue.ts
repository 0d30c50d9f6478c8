import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type Catalogue, catalogueOf } from "../plan/catalogue.ts";
import { catalogueIds } from "../plan/catalogueIds.ts";
import type { JobOptions } from "./jobOptions.ts";
import type { Pool } from "./pool.ts";

/** What a job needs of a pool. */
export type Workers = Pick<Pool, "run">;

/** Ids a message asks for: a fraction of a second even in a hard zone, so that cancelling is quick and workers share evenly. */
const CHUNK_IDS = 8;

/** Catalogues that were made before, for as long as their project is in use. */
const made = new WeakMap<Project, Catalogue>();

/** Makes routines by their ids in the workers, in the order of the ids; null where a pattern has no room. */
export async function makeRoutines(
  workers: Workers,
  project: Project,
  ids: readonly string[],
  { signal, gate }: JobOptions = {},
): Promise<readonly (Routine | null)[]> {
  const chunks = Array.from({ length: Math.ceil(ids.length / CHUNK_IDS) }, (_, i) =>
    ids.slice(i * CHUNK_IDS, (i + 1) * CHUNK_IDS),
  );
  const answers = chunks.map((chunk) =>
    workers.run(project, null, { kind: "routines", ids: chunk }, { signal, gate }),
  );
  return (await Promise.all(answers)).flat();
}

/**
 * A project's catalogue, made in the workers and kept: asked for again, it is there at once. The same for any number of
 * workers. Rejects with the signal's reason when cancelled.
 */
export async function catalogueInWorkers(
  workers: Workers,
  project: Project,
  options: JobOptions = {},
): Promise<Catalogue> {
  const known = made.get(project);
  if (known) return known;
  const catalogue = catalogueOf(await makeRoutines(workers, project, catalogueIds(project), options));
  made.set(project, catalogue);
  return catalogue;
}
