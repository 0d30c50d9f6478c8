import {
  forgetSetting,
  RESCUE,
  readSetting,
  readTabSetting,
  settingsLike,
  writeTabSetting,
} from "../state/settings.ts";
import type { Form } from "./form.ts";
import type { Shelf, Writing } from "./shelf.svelte.ts";

/** What a page that goes puts where it stays: a writing to the database that is under way then ends with the page. */
export interface Rescue extends Writing {
  /** Of its page, which may not be there yet. */
  readonly id: string;
  /** The page's revision that this was to be written over; 0 for none. */
  readonly revision: number;
  /** The fragment the address had: a link that was changed must not open anew as it came. */
  readonly hash: string;
}

export interface Rescued {
  /** Fragments of links that have become pages. */
  readonly hashes: readonly string[];
  /** What the database still does not take; null for nothing. */
  readonly homeless: Rescue | null;
}

/** Puts all that was left so on the shelf, which has been listed; whatever is there already stays as it is. */
export async function takeRescued(shelf: Shelf): Promise<Rescued> {
  const hashes: string[] = [];
  let homeless: Rescue | null = null;
  for (const key of settingsLike(RESCUE)) {
    const rescue = readRescue(readSetting(key));
    const id = rescue && (await putBack(shelf, rescue));
    // Only one can lie open: the others stay until the database takes them.
    if (rescue && !id && homeless) continue;
    forgetSetting(key);
    if (!rescue) continue;
    hashes.push(rescue.hash);
    if (!id) homeless = rescue;
    else if (readTabSetting("open") === rescue.id) writeTabSetting("open", id);
  }
  return { hashes, homeless };
}

/** Id of the page that now holds it; null where it could not be kept. */
async function putBack(shelf: Shelf, { id, revision, name, text, form }: Rescue): Promise<string | null> {
  const writing: Writing = { name, text, form };
  const page = (await shelf.open(id))?.page;
  if (!page) return (await shelf.add(writing, id))?.id ?? null;
  const same = page.text === text && JSON.stringify(page.form) === JSON.stringify(form);
  // The writing had ended after all.
  if (same) return id;
  const put = page.revision === revision ? (await shelf.save(page, writing))?.page : await shelf.add(writing);
  return put?.id ?? null;
}

/** What is no entry of ours is nothing. */
function readRescue(text: string | null): Rescue | null {
  try {
    const read = JSON.parse(text ?? "") as Partial<Record<keyof Rescue, unknown>>;
    const { id, revision, name, hash, form } = read;
    if (typeof id !== "string" || typeof name !== "string" || typeof read.text !== "string") return null;
    return {
      ...{ id, name, text: read.text, form: typeof form === "object" ? (form as Form | null) : null },
      ...{
        revision: typeof revision === "number" ? revision : 0,
        hash: typeof hash === "string" ? hash : "",
      },
    };
  } catch {
    return null;
  }
}
