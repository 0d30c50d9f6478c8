import { describe, expect, it } from "vitest";
import * as german from "../../../src/texts/german/german.ts";
import { allSaid, englishTopics, type Said } from "../../support/texts.ts";

/** Texts that are the same in both languages, and why. */
const SAME: Readonly<Record<string, string>> = {
  "drawing.ball": "the same word, and a number",
  "dialog.link": "the same word",
  "help.word.zone": "the same word",
  "help.word.routine": "the same word",
  "shell.titles.zone": "the same word",
  "shell.titles.jury": "the same word",
  "table.ofBall": "the same word, and a number",
  "watch.ball": "the same word, and a number",
};

const said = await allSaid();
const named = (found: readonly Said[]): readonly string[] => [...new Set(found.map(({ name }) => name))];

describe("German", () => {
  it("has every English topic, and no other", async () => {
    expect(Object.keys(german).sort()).toEqual([...(await englishTopics()).keys()].sort());
  });

  it("says something wherever English does, and nothing unfinished", () => {
    expect(said.length).toBeGreaterThan(50);
    const unsaid = said.filter(({ english, german }) => (english.trim() === "") !== (german.trim() === ""));
    expect(named(unsaid)).toEqual([]);
    expect(named(said.filter((each) => /undefined|NaN|\[object/.test(each.english + each.german)))).toEqual(
      [],
    );
  });

  it("differs from English, but where the list says why not", () => {
    const same = named(said.filter((each) => each.english === each.german && /\p{L}/u.test(each.english)));
    expect(same.filter((name) => !(name in SAME))).toEqual([]);
    // What the list excuses needs the excuse.
    expect(Object.keys(SAME).filter((name) => !same.includes(name))).toEqual([]);
  });

  it("keeps numbers, quotes and dashes in its own way", () => {
    expect(named(said.filter(({ german }) => /”|"/.test(german) || /^[^„]*“/.test(german)))).toEqual([]);
    expect(named(said.filter(({ isFixed, german }) => isFixed && /\d\.\d/.test(german)))).toEqual([]);
  });
});
