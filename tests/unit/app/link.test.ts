import { describe, expect, it } from "vitest";
import { linkHash, readLink } from "../../../src/app/project/link.ts";
import { EMPTY_RECORD } from "../../../src/model/record.ts";
import { shippedProject, shippedText } from "../../support/projectFiles.ts";

const shown = { routine: "fan-5", seed: 3, run: 17, timeS: 2.5 };

describe("a link", () => {
  it("carries the project and what is on show", async () => {
    const hash = await linkHash(shippedText("usual-zone.json"), shown);
    expect(hash).toMatch(/^#w1=[A-Za-z0-9_-]+$/);
    const read = await readLink(hash);
    expect(read).toEqual({
      ok: true,
      value: { file: { project: shippedProject(), routines: [], record: EMPTY_RECORD }, shown },
    });
  });

  it("is checked like any file", async () => {
    const read = await readLink(await linkHash('{"formatVersion": 1, "zone": 3}', shown));
    expect(read.ok ? [] : read.issues.map(({ code }) => code)).toContain("wrong-type");
    const run = await readLink(await linkHash(shippedText("usual-zone.json"), { ...shown, run: 1e12 }));
    expect(run.ok ? [] : run.issues.map(({ path }) => path)).toEqual(["shown.run"]);
  });

  it("is refused when it was cut, changed, or unpacks without end", async () => {
    const whole = await linkHash(shippedText("usual-zone.json"), shown);
    const bomb = await linkHash(" ".repeat(3_000_000), shown);
    expect(bomb.length).toBeLessThan(20_000);
    for (const hash of [whole.slice(0, -40), `${whole.slice(0, 60)}AAAA${whole.slice(64)}`, "#w1=", bomb]) {
      const read = await readLink(hash);
      expect(read.ok ? "" : read.issues[0]?.code).toBe("bad-link");
    }
  });
});
