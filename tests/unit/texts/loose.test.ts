import { describe, expect, it } from "vitest";
import { looseTextFindings } from "../../support/looseTexts.ts";
import { ROOMS } from "../../support/rooms.ts";
import { programFiles, read } from "../../support/sourceCheck.ts";

/** Files with words that are no texts of the page, and why. */
const EXCEPTIONS: Readonly<Record<string, string>> = {
  "src/app/handOn/printHtml.ts": "a style",
  "src/app/parts/LanguageChoice.svelte": "asks in both languages at once",
  "src/jobs/evidence.ts": "parts of the work, which only the command names",
  "src/jobs/fixes.ts": "a verdict as JSON has it",
  "src/jobs/nodeThreads.ts": "Node's workers serve the command",
  "src/jobs/weakness.ts": "parts of the work, which only the command names",
  "src/model/presets.ts": "names as files hold them; presetNames.ts shows them",
  "src/model/presetSources.ts": "titles of sources",
  "src/model/sensorPresets.ts": "names as files hold them; presetNames.ts shows them",
  "src/report/coder/dialects.ts": "words of programming languages",
  "src/report/sheet/trialCommand.ts": "a command to type",
  "src/view/label.ts": "names of typefaces",
};

/** The command speaks English, whatever the page speaks. */
const rooms = ROOMS.map(({ name }) => name).filter((name) => name !== "texts" && name !== "cli");
const files = programFiles("src");
const script = (text: string) => looseTextFindings("src/a/b.ts", text);
const component = (text: string) => looseTextFindings("src/a/B.svelte", text);

describe("words that stand outside src/texts", () => {
  it("are found in scripts: sentences, labels, parts of templates, small words that are shown", () => {
    const planted = [
      'const a = () => "No ball was lost.";',
      'const b = () => "Robot";',
      `const c = (n: number) => \`\${n} balls came home\`;`,
      'const d = () => ({ words: n === 1 ? "ball" : "balls" });',
      'label("wedge", style);',
      'textAt(0, 0, "seconds", "end");',
      'const e = `<text x="1">The way home</text>`;',
    ];
    expect(planted.map((each) => script(each).length)).toEqual([1, 1, 1, 2, 1, 1, 1]);
    expect(script("\n\nconst a = 'No ball was lost.';")).toEqual(["3: No ball was lost."]);
  });

  it("are found in components: between tags, in what is read aloud, in expressions and scripts", () => {
    expect(component("<p>home</p>")).toEqual(["1: home"]);
    expect(component('<button aria-label="home" class="big round">+</button>')).toEqual(["1: home"]);
    expect(component('<Working words="moves" {work} />')).toEqual(["1: moves"]);
    expect(component('<p>{n > 1 ? "many balls" : t.one}</p>')).toEqual(["1: many balls"]);
    expect(
      component('<script lang="ts">\nconst a = "A ball of your own";\n</script>\n<p>{a} mm</p>'),
    ).toEqual(["2: A ball of your own"]);
  });

  it("are no codes, keys, selectors, types, thrown errors or texts of src/texts", () => {
    const fine = [
      'import { a } from "two words";',
      'type A = "sure coverage" | "two words";',
      `throw new RangeError(\`pool size \${n}: a whole number\`);`,
      'reject(new Error("the pool is closed"));',
      'if (verdict === "not told apart") done();',
      'const a = { "sure coverage": 0.1 };',
      'target.closest("dialog, input, select");',
      'matchMedia("(prefers-contrast: more)");',
      'const b = `<svg width="1" aria-labelledby="a b"><g/></svg>`;',
      "const c = t.toMend(3);",
      `const d = \`\${n} mm\`;`,
    ];
    expect(fine.flatMap(script)).toEqual([]);
    expect(component('<p class="soft small">{t.hint}: {n} mm</p>')).toEqual([]);
  });

  it.each(rooms)("are nowhere in %s, but where the list says why", (room) => {
    const own = files.filter((path) => path.startsWith(`src/${room}/`));
    const found = own.map((path) => ({ path, findings: looseTextFindings(path, read(path)) }));
    const loose = found.filter(({ findings }) => findings.length > 0);
    expect(own.length).toBeGreaterThan(5);
    expect(loose.filter(({ path }) => !(path in EXCEPTIONS))).toEqual([]);
    // What the list excuses needs the excuse.
    const excused = Object.keys(EXCEPTIONS).filter((path) => path.startsWith(`src/${room}/`));
    expect(excused.filter((path) => !loose.some((each) => each.path === path))).toEqual([]);
  });
});
