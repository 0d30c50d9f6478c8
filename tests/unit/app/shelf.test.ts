import { describe, expect, it } from "vitest";
import { freeName } from "../../../src/app/project/page.ts";
import { Shelf } from "../../../src/app/project/shelf.svelte.ts";
import type { Store } from "../../../src/app/project/store.ts";
import { memoryStore } from "../../support/memoryStore.ts";
import { shippedText } from "../../support/projectFiles.ts";

const text = shippedText("usual-zone.json");
const writing = { name: "Ours", text, form: null };

/** Two tabs share a store; ids and clock count on. */
function tabs(store: Store): readonly [Shelf, Shelf] {
  let count = 0;
  const next = () => ++count;
  return [new Shelf(store, next, () => `id-${next()}`), new Shelf(store, next, () => `id-${next()}`)];
}

describe("the shelf of projects", () => {
  it("keeps a project and gives it back", async () => {
    const [shelf] = tabs(memoryStore());
    const page = await shelf.add(writing);
    await shelf.list();
    expect(shelf.pages.map(({ name }) => name)).toEqual(["Ours"]);
    const found = await shelf.open(page?.id ?? "");
    expect(found?.file.project.zone.widthMm).toBe(1200);
  });

  it("never writes over what another tab wrote since", async () => {
    const store = memoryStore();
    const [here, there] = tabs(store);
    const page = await here.add(writing);
    if (!page) throw new Error("not kept");
    const theirs = await there.save(page, { ...writing, name: "Theirs" });
    expect(theirs?.kind).toBe("saved");
    const mine = await here.save(page, { ...writing, name: "Theirs" });
    expect([mine?.kind, mine?.page.name]).toEqual(["parted", "Theirs (2)"]);
    await here.list();
    expect(here.pages.map(({ name }) => name).sort()).toEqual(["Theirs", "Theirs (2)"]);
    const after = mine && (await here.save(mine.page, writing));
    expect(after?.kind).toBe("saved");
  });

  it("keeps what is still under edit when another tab threw the page away", async () => {
    const [here, there] = tabs(memoryStore());
    const page = await here.add(writing);
    if (!page) throw new Error("not kept");
    await there.list();
    await there.remove(page.id);
    expect((await here.save(page, writing))?.kind).toBe("parted");
  });

  it("puts aside what it cannot read, whatever it is, and keeps it until it is thrown away", async () => {
    const store = memoryStore(
      new Map<string, unknown>([
        ["page-a", "junk"],
        ["page-b", { id: "b", name: "Torn", savedAtMs: 1, revision: 1, text: "{", form: null }],
        ["other", 1],
      ]),
    );
    const [shelf] = tabs(store);
    await shelf.list();
    expect(shelf.pages).toEqual([]);
    expect(shelf.aside.map(({ name, text: kept }) => [name, kept])).toEqual([
      ["A project without a name", '"junk"'],
      ["Torn", "{"],
    ]);
    await shelf.list();
    expect(shelf.aside.length).toBe(2);
    for (const { key } of shelf.aside) await shelf.throwAside(key);
    expect([...store.content.keys()]).toEqual(["other"]);
  });

  it("tells when the browser keeps nothing", async () => {
    const broken: Store = {
      ...memoryStore(),
      update: async () => Promise.reject(new Error("storage is full")),
    };
    const [shelf] = tabs(broken);
    expect(await shelf.add(writing)).toBeNull();
    expect(shelf.fault).toBe("storage is full");
  });
});

it("finds a name nobody has", () => {
  expect(freeName("Hall", [])).toBe("Hall");
  expect(freeName("Hall", ["Hall", "Hall (2)"])).toBe("Hall (3)");
  expect(freeName("Hall (2)", ["Hall (2)", "Hall"])).toBe("Hall (3)");
  expect(freeName("  ", [])).toBe("Project (2)");
});
