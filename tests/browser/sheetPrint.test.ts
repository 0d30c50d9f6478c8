import { expect, it } from "vitest";
import { RoutineMaker } from "../../src/plan/maker.ts";
import { jurySheet } from "../../src/report/sheet/jurySheet.ts";
import { AUDIENCES, type Audience, type SheetFacts } from "../../src/report/sheet/sheetFacts.ts";
import { speak, spokenLanguage } from "../../src/texts/language.ts";
import { openPage } from "../support/page.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { sheetFacts } from "../support/sheetFacts.ts";

/** Pages of a PDF as Chromium writes it. */
const pagesOf = (pdf: Buffer): number => pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;

/** Another routine does better: the sheet has a sentence more. */
function beaten({ evidence, ...facts }: SheetFacts): SheetFacts {
  const [first, ...others] = evidence.alternatives;
  const sure = { value: 1, low: 1, high: 1, trials: 60 };
  return {
    ...facts,
    evidence: { ...evidence, alternatives: [{ ...first!, successRate: sure }, ...others] },
  };
}

it("prints a sheet, in German too, with practice and decisions on as many pages as it says, on A4 and Letter", async () => {
  const project = shippedProject("long-narrow.json");
  const facts = beaten(sheetFacts(project, new RoutineMaker(project).make("fan-n5-c0-v60")!, 60));
  // The app itself would stand in the way: a page of its own.
  const page = await (await openPage("icon.svg")).context().newPage();
  const printed: string[] = [];
  const print = async (pages: 1 | 2, audience: Audience, format: string): Promise<void> => {
    await page.setContent(jurySheet(facts, { pages, audience, steps: false }));
    const count = pagesOf(await page.pdf({ format }));
    if (count !== pages) printed.push(`${spokenLanguage()}, ${pages} for ${audience} on ${format}: ${count}`);
  };
  // German takes a tenth more room; one page of English is set larger.
  await speak("de");
  for (const audience of AUDIENCES) {
    for (const pages of [1, 2] as const) {
      for (const format of ["A4", "Letter"]) await print(pages, audience, format);
    }
  }
  await speak("en");
  for (const audience of AUDIENCES) await print(1, audience, "Letter");
  expect(printed).toEqual([]);
  // The appendix begins a page of its own.
  await page.setContent(jurySheet(facts, { pages: 2, audience: "engineers", steps: true }));
  expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(3);
});
