import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Shelf } from "../../../src/app/project/shelf.svelte.ts";
import type { Store } from "../../../src/app/project/store.ts";
import { Desk } from "../../../src/app/state/desk.svelte.ts";
import { memoryStore } from "../../support/memoryStore.ts";

/** A store whose writings end only when they are let. */
function slowStore(store: Store = memoryStore()) {
  const waiting: (() => void)[] = [];
  const slow: Store = {
    ...store,
    update: async (key, change) => {
      await new Promise<void>((resolve) => waiting.push(resolve));
      await store.update(key, change);
    },
  };
  return { store: slow, waiting };
}

async function deskOn(store: Store): Promise<Desk> {
  const desk = new Desk(new Shelf(store));
  await desk.openExample("usual-zone");
  return desk;
}

/** Lets everything run that can. */
function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

describe("the desk", () => {
  it("calls a project kept once it is, not while it is being written", async () => {
    const { store, waiting } = slowStore();
    const desk = await deskOn(store);
    expect(desk.saveState).toBe("untouched");
    desk.draft?.edit("note", "One.");
    const flushed = desk.flush();
    await settled();
    expect([desk.saveState, desk.page, waiting.length]).toEqual(["waiting", null, 1]);
    waiting.shift()?.();
    await flushed;
    expect(desk.saveState).toBe("saved");
    expect((await store.get(`page-${desk.page?.id}`)) as object).toMatchObject({ revision: 1 });
  });

  it("is not done while what changed during a writing is not written", async () => {
    const { store, waiting } = slowStore();
    const desk = await deskOn(store);
    desk.draft?.edit("note", "One.");
    const first = desk.flush();
    await settled();
    desk.draft?.edit("note", "Two.");
    waiting.shift()?.();
    await first;
    expect(desk.saveState).toBe("waiting");
    const second = desk.flush();
    await settled();
    waiting.shift()?.();
    await second;
    expect(desk.saveState).toBe("saved");
    const kept = (await desk.shelf.open(desk.page?.id ?? ""))?.file.project.note;
    expect(kept).toBe("Two.");
  });

  it("says that it could not be kept, and keeps the next change", async () => {
    const store = memoryStore();
    let isFull = true;
    const desk = await deskOn({
      ...store,
      update: async (key, change) => {
        if (isFull) throw new Error("full");
        await store.update(key, change);
      },
    });
    desk.draft?.edit("note", "One.");
    await desk.flush();
    expect([desk.saveState, desk.shelf.fault]).toEqual(["failed", "full"]);
    isFull = false;
    desk.draft?.edit("note", "Two.");
    await desk.flush();
    expect([desk.saveState, desk.shelf.fault, store.content.size]).toEqual(["saved", "", 1]);
  });

  it("writes nothing into a project that is about the one before", async () => {
    const { store, waiting } = slowStore();
    const desk = await deskOn(store);
    const before = desk.draft;
    await desk.openExample("long-narrow");
    before?.edit("note", "Late.");
    await desk.flush();
    expect([desk.saveState, waiting.length, desk.draft?.at("name")]).toEqual([
      "untouched",
      0,
      "The long corridor",
    ]);
    expect(desk.draft?.at("note")).not.toBe("Late.");
    desk.draft?.edit("note", "In time.");
    expect(desk.saveState).toBe("waiting");
  });

  it("throws an open project away for good, even one that is just being written", async () => {
    const memory = memoryStore();
    const { store, waiting } = slowStore(memory);
    const desk = await deskOn(store);
    desk.draft?.edit("note", "One.");
    const first = desk.flush();
    await settled();
    waiting.shift()?.();
    await first;
    const { page } = desk;
    if (!page) throw new Error("not kept");
    desk.draft?.edit("note", "Two.");
    void desk.flush();
    await settled();
    const removed = desk.remove(page);
    await settled();
    waiting.shift()?.();
    await removed;
    expect([desk.page, desk.saveState, memory.content.size]).toEqual([null, "untouched", 0]);
  });
});

describe("what a page that goes could not write any more", () => {
  const kept = new Map<string, string>();
  beforeEach(() => {
    kept.clear();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => {
        kept.set(key, value);
        Object.defineProperty(storage, key, { value, enumerable: true, configurable: true });
      },
      removeItem: (key: string) => {
        kept.delete(key);
        Reflect.deleteProperty(storage, key);
      },
    };
    for (const key of ["getItem", "setItem", "removeItem"])
      Object.defineProperty(storage, key, { enumerable: false });
    vi.stubGlobal("localStorage", storage);
  });
  afterEach(() => vi.unstubAllGlobals());

  const rescues = () => [...kept.keys()].filter((key) => key.includes("rescue"));

  /** Changes a project and goes while its writing has only begun. */
  async function leftBehind(memory = memoryStore(), hash = "") {
    const desk = await deskOn(slowStore(memory).store);
    desk.draft?.edit("note", "The last word.");
    desk.leave(hash);
    await settled();
    return memory;
  }

  it("lies open again, in a page of its own", async () => {
    const memory = await leftBehind();
    expect([memory.content.size, rescues().length]).toEqual([0, 1]);
    const next = new Desk(new Shelf(memory));
    await next.start("");
    expect(next.draft?.file.project.note).toBe("The last word.");
    expect([next.saveState, memory.content.size, rescues()]).toEqual(["saved", 1, []]);
  });

  it("lies open in place of the link that it was changed from", async () => {
    const hash = "#w1=AAAA";
    const next = new Desk(new Shelf(await leftBehind(memoryStore(), hash)));
    await next.start(hash);
    expect([next.draft?.file.project.note, next.badFile]).toEqual(["The last word.", null]);
  });

  it("is written over the page as it was, and into one of its own where another tab wrote since", async () => {
    for (const isTouched of [false, true]) {
      const memory = memoryStore();
      const first = await deskOn(memory);
      first.draft?.edit("note", "One.");
      await first.flush();
      const { store } = slowStore(memory);
      const desk = new Desk(new Shelf(store));
      await desk.openPage(first.page?.id ?? "");
      desk.draft?.edit("note", "The last word.");
      desk.leave("");
      if (isTouched) {
        first.draft?.edit("note", "Elsewhere.");
        await first.flush();
      }
      const next = new Desk(new Shelf(memory));
      await next.start("");
      expect(next.draft?.file.project.note).toBe("The last word.");
      expect(memory.content.size).toBe(isTouched ? 2 : 1);
    }
  });

  it("is not there twice when the writing ended after all", async () => {
    const memory = memoryStore();
    const { store, waiting } = slowStore(memory);
    const desk = await deskOn(store);
    desk.draft?.edit("note", "The last word.");
    desk.leave("");
    const left = [...kept];
    await settled();
    waiting.shift()?.();
    await desk.flush();
    expect([desk.saveState, rescues()]).toEqual(["saved", []]);
    for (const [key, value] of left) localStorage.setItem(key, value);
    const next = new Desk(new Shelf(memory));
    await next.start("");
    expect([next.draft?.file.project.note, memory.content.size]).toEqual(["The last word.", 1]);
  });

  it("lies open also where the browser's database takes nothing", async () => {
    const memory = memoryStore();
    const full = { ...memory, update: () => Promise.reject(new Error("full")) };
    const desk = await deskOn(full);
    desk.draft?.edit("note", "The last word.");
    await desk.flush();
    expect(desk.saveState).toBe("failed");
    desk.leave("");
    const next = new Desk(new Shelf(full));
    await next.start("");
    expect([next.draft?.file.project.note, next.saveState]).toEqual(["The last word.", "failed"]);
  });

  it("waits where two were left and neither can be kept: one lies open, the other is not lost", async () => {
    const memory = memoryStore();
    const full = { ...memory, update: () => Promise.reject(new Error("full")) };
    for (const note of ["One.", "Two."]) {
      const desk = await deskOn(full);
      desk.draft?.edit("note", note);
      desk.leave("");
      await desk.flush();
    }
    const next = new Desk(new Shelf(full));
    await next.start("");
    expect(rescues()).toHaveLength(1);
    next.leave("");
    await new Desk(new Shelf(memory)).start("");
    const kept = [...memory.content.values()].map((page) => JSON.stringify(page));
    expect(kept.some((text) => text.includes("One.")) && kept.some((text) => text.includes("Two."))).toBe(
      true,
    );
    expect(rescues()).toEqual([]);
  });

  it("is thrown away with its project", async () => {
    const memory = memoryStore();
    const desk = await deskOn(memory);
    desk.draft?.edit("note", "One.");
    await desk.flush();
    desk.draft?.edit("note", "Two.");
    desk.leave("");
    if (!desk.page) throw new Error("not kept");
    await desk.remove(desk.page);
    expect([memory.content.size, rescues()]).toEqual([0, []]);
  });
});
