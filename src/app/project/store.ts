import { createStore, del, entries, get, update } from "idb-keyval";

/** Where projects are kept: the browser's database, or a stand-in for tests. */
export interface Store {
  entries(): Promise<readonly (readonly [string, unknown])[]>;
  get(key: string): Promise<unknown>;
  /** Reads and writes in one go, so that two tabs cannot come between each other. */
  update(key: string, change: (old: unknown) => unknown): Promise<void>;
  remove(key: string): Promise<void>;
}

/** The browser's database; opened when first asked. It may be switched off: then every call rejects. */
export function browserStore(): Store {
  let opened: ReturnType<typeof createStore> | undefined;
  const store = () => {
    opened ??= createStore("wedgeward", "projects");
    return opened;
  };
  return {
    entries: async () =>
      (await entries<string, unknown>(store())).map(([key, value]) => [String(key), value]),
    get: async (key) => get(key, store()),
    update: async (key, change) => update(key, change, store()),
    remove: async (key) => del(key, store()),
  };
}
