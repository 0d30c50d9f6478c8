import { expect, it } from "vitest";
import { RoutineMaker } from "../../src/plan/maker.ts";
import { jurySheet } from "../../src/report/sheet/jurySheet.ts";
import { AUDIENCES } from "../../src/report/sheet/sheetFacts.ts";
import { LANGUAGES, speak } from "../../src/texts/language.ts";
import { openPage } from "../support/page.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { sheetFacts } from "../support/sheetFacts.ts";

const choices = ([1, 2] as const).flatMap((pages) =>
  AUDIENCES.map((audience) => ({ pages, audience, steps: false })),
);

/** Pages of a PDF as Chromium writes it. */
const pagesOf = (pdf: Buffer): number => pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;

it("prints a sheet with practice and decisions on as many pages as it says, on A4 and Letter, in every language", async () => {
  const project = shippedProject("long-narrow.json");
  const facts = sheetFacts(project, new RoutineMaker(project).make("fan-n5-c0-v60")!, 60);
  // The app itself would stand in the way: a page of its own.
  const page = await (await openPage("icon.svg")).context().newPage();
  const printed: string[] = [];
  for (const language of LANGUAGES) {
    await speak(language);
    for (const choice of choices) {
      await page.setContent(jurySheet(facts, choice));
      for (const format of ["A4", "Letter"]) {
        const count = pagesOf(await page.pdf({ format }));
        const { pages, audience } = choice;
        if (count !== pages) printed.push(`${language}, ${pages} for ${audience} on ${format}: ${count}`);
      }
    }
  }
  expect(printed).toEqual([]);
  // The appendix begins a page of its own.
  await page.setContent(jurySheet(facts, { pages: 2, audience: "engineers", steps: true }));
  expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(3);
});
