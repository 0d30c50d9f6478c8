import { describe, expect, it } from "vitest";
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
