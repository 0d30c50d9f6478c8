import type { Store } from "../../src/app/project/store.ts";

/** A stand-in for the browser's database; `content` is what it holds. */
export function memoryStore(
  content: Map<string, unknown> = new Map(),
): Store & { readonly content: Map<string, unknown> } {
  return {
    content,
    entries: async () => [...content],
    get: async (key) => content.get(key),
    update: async (key, change) => void content.set(key, change(content.get(key))),
    remove: async (key) => void content.delete(key),
  };
}
