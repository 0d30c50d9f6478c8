import { afterEach, describe, expect, it } from "vitest";
import { shellTexts } from "../../../src/texts/english/shell.ts";
import { nearestLanguage, speak, spokenLanguage, topic } from "../../../src/texts/language.ts";
import { fixed, listed, plain } from "../../../src/texts/numbers.ts";

describe("the language spoken", () => {
  afterEach(() => speak("en"));

  it("is English unless said otherwise", () => {
    expect(spokenLanguage()).toBe("en");
    expect(shellTexts.titles.robot).toBe("Robot");
  });

  it("changes what every topic says, groups and functions too, and back", async () => {
    await speak("de");
    expect(shellTexts.titles.robot).toBe("Roboter");
    expect(shellTexts.toMend(3)).toBe("3 zu verbessern");
    await speak("en");
    expect(shellTexts.titles.robot).toBe("Robot");
    expect(shellTexts.toMend(3)).toBe("3 to mend");
  });

  it("holds for topics that are loaded afterwards", async () => {
    await speak("de");
    const late = topic("number", { and: "and" });
    expect(late.and).toBe("und");
  });

  it("writes numbers its way", async () => {
    expect(fixed(-1.26, 1)).toBe("−1.3");
    expect(fixed(-0.01, 1)).toBe("0.0");
    expect(plain(0.5)).toBe("0.5");
    expect(listed(["1", "2", "5"])).toBe("1, 2 and 5");
    await speak("de");
    expect(fixed(-1.26, 1)).toBe("−1,3");
    expect(plain(12.5)).toBe("12,5");
    expect(listed(["1", "2", "5"])).toBe("1, 2 und 5");
    expect(listed(["1"])).toBe("1");
  });

  it.each([
    [["de-AT", "en"], "de"],
    [["fr", "de"], "de"],
    [["en-GB", "de"], "en"],
    [["fr"], "en"],
    [[], "en"],
  ])("of a browser that asks for %j is %s", (wished, language) => {
    expect(nearestLanguage(wished)).toBe(language);
  });
});
