import { describe, expect, it } from "vitest";
import { keptTextFindings } from "../../support/keptTexts.ts";
import { programFiles, read } from "../../support/sourceCheck.ts";

const IMPORT = 'import { lossTexts } from "../texts/english/loss.ts";\n';

describe("a text that a module keeps", () => {
  it("is found in constants, lists and groups, not in functions", () => {
    expect(keptTextFindings("src/a/b.ts", `${IMPORT}const A = lossTexts.jammed;`)).toEqual([
      "2: lossTexts.jammed is kept",
    ]);
    expect(
      keptTextFindings("src/a/b.ts", `${IMPORT}export const L = [1].map(String).concat(lossTexts.jammed);`),
    ).toHaveLength(1);
    expect(
      keptTextFindings("src/a/b.ts", `${IMPORT}const A = () => lossTexts.jammed;\nconst T = lossTexts;`),
    ).toEqual([]);
  });

  // Components ask anew when they are put up, which the page does after every change of the language.
  it("is nowhere in the program", () => {
    const files = programFiles("src").filter(
      (path) => path.endsWith(".ts") && !path.startsWith("src/texts/"),
    );
    const found = files.flatMap((path) =>
      keptTextFindings(path, read(path)).map((each) => `${path}:${each}`),
    );
    expect(files.length).toBeGreaterThan(300);
    expect(found).toEqual([]);
  });
});
