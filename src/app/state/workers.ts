import type { Pool } from "../../jobs/pool.ts";

/** What the app's state needs of a pool: so that tests can stand in for it. */
export type Workers = Pick<Pool, "run">;
