import { afterEach, describe, expect, it } from "vitest";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { listing } from "../../../src/report/coder/listing.ts";
import { stepSheet } from "../../../src/report/coder/steps.ts";
import { stepJson, stepRows } from "../../../src/report/coder/stepTable.ts";
import { poster } from "../../../src/report/poster.ts";
import { practiceCard } from "../../../src/report/practiceCard.ts";
import { heatPicture } from "../../../src/report/sheet/heatPicture.ts";
import { jurySheet } from "../../../src/report/sheet/jurySheet.ts";
import { AUDIENCES, USUAL_SHEET } from "../../../src/report/sheet/sheetFacts.ts";
import { drivenWay, NO_WAY } from "../../../src/report/sheet/way.ts";
import { heatParts } from "../../../src/score/heatMap.ts";
import { speak } from "../../../src/texts/language.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { englishFinder } from "../../support/leftovers.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { sheetFacts } from "../../support/sheetFacts.ts";

const english = await englishFinder();
const looking = shippedProject("looking-robot.json");
const program = new RoutineMaker(looking).make("look-n1-none")!;
const deciding = sheetFacts(looking, program);
const usual = shippedProject();
const list = sheetFacts(usual, new RoutineMaker(usual).make("fan-n5-c0-v60")!, 60);

describe("the sheet of a routine that decides as it goes", () => {
  const html = jurySheet(deciding, { ...USUAL_SHEET, steps: true });

  it("draws the way of a run that it names, with the numbers of the steps", () => {
    const { index, home, recording } = deciding.evidence.example!;
    expect(html).toContain(`Drawn is run ${index} (${home} of 3 balls home)`);
    expect(html).toMatch(/<li value="5" style="margin-left: 8mm">fetch the noted ball/);
    const way = drivenWay(recording);
    expect(way.points.length).toBeGreaterThan(100);
    expect(way.ends.map(({ step }) => step).slice(0, 3)).toEqual([1, 2, 5]);
    const last = robotAt(recording, recording.moveStartS.at(-1)!);
    expect(way.points.at(-1)).toEqual(last);
  });

  it("says of which routines the time is a mean, and names lines where balls are lost", () => {
    expect(html.match(/about \d+ s/g)).toHaveLength(2);
    expect(html).toMatch(/in line \d+: /);
  });
});

describe("the sheet of a routine that is beaten", () => {
  const told = "more often than ours";

  it("says so where the ranges leave no doubt, and not where they overlap", () => {
    expect(jurySheet(list, USUAL_SHEET)).not.toContain(told);
    const { evidence } = list;
    const [first, ...others] = evidence.alternatives;
    const sure = { value: 0.97, low: evidence.summary.successRate.high + 0.001, high: 1, trials: 60 };
    const withBetter = { ...evidence, alternatives: [{ ...first!, successRate: sure }, ...others] };
    const html = jurySheet({ ...list, evidence: withBetter }, USUAL_SHEET);
    expect(html).toContain(`${told}, by more than chance: ${first!.label}.`);
    const unsure = { ...sure, low: evidence.summary.successRate.high - 0.001 };
    const withLike = { ...evidence, alternatives: [{ ...first!, successRate: unsure }, ...others] };
    expect(jurySheet({ ...list, evidence: withLike }, USUAL_SHEET)).not.toContain(told);
  });
});

describe("the map of losses on the sheet", () => {
  const { map, balls, trials } = list.evidence.failings;

  it("counts every ball once, in the part of the zone in which it started", () => {
    const parts = heatParts(map);
    expect(parts.map((row) => row.length)).toEqual([4, 4, 4]);
    const sum = (of: "balls" | "delivered") => parts.flat().reduce((total, part) => total + part[of], 0);
    expect(sum("balls")).toBe(balls * trials);
    expect(sum("delivered")).toBe(list.evidence.failings.delivered);
    // The upper right part holds the wedge: the fewest balls start there.
    const fewest = Math.min(...parts.flat().map((part) => part.balls));
    expect([parts[0]![3]!.balls, parts[2]![0]!.balls]).toContain(fewest);
  });

  it("draws the share of losses as area, as the page does", () => {
    const squares = heatPicture(usual, map).shapes.filter(
      (shape) => shape.kind === "area" && shape.fill === "full",
    );
    const rated = map.cells.filter(({ rate }) => rate !== null);
    expect(squares).toHaveLength(rated.length);
    const sides = squares.map((shape) =>
      shape.kind === "area" ? shape.points[1]![0] - shape.points[0]![0] : 0,
    );
    const order = [...rated.keys()].sort((a, b) => rated[a]!.rate!.value - rated[b]!.rate!.value);
    expect(sides[order[0]!]).toBe(Math.max(...sides));
  });

  it("tells of the hardest placement how often, at what, and how to see it", () => {
    const html = jurySheet(list, USUAL_SHEET);
    const { hardest } = list.evidence;
    const [most] = hardest!.losses;
    expect(html).toContain(`(${most!.balls} of ${hardest!.balls} balls)`);
    const spaced = jurySheet({ ...list, projectArgument: "old mill.json" }, USUAL_SHEET);
    expect(spaced).toContain("wedgeward trial &quot;old mill.json&quot; --routine");
    expect(html).toMatch(
      /<code>wedgeward trial mill\.json --routine fan-n5-c0-v60 --seed 2 --index \d+ --at /,
    );
  });
});

describe("in German, what is printed and handed on", () => {
  afterEach(() => speak("en"));

  it.each([
    ["a list of moves", usual, "fan-n5-c0-v60"],
    ["a routine that decides", looking, "look-n1-none"],
  ])("says nothing in English: %s", async (_, project, id) => {
    await speak("de");
    const routine = new RoutineMaker(project).make(id)!;
    const facts = sheetFacts(project, routine, 12);
    // What the facts of the tests say themselves is English.
    const own = { ...facts, decisions: [], evidence: { ...facts.evidence, alternatives: [] } };
    const sheets = AUDIENCES.flatMap((audience) =>
      ([1, 2] as const).map((pages) => jurySheet(own, { pages, audience, steps: true })),
    );
    const steps = stepSheet(project, routine);
    const entry = { routine: id, placement: facts.evidence.hardest!.placement, hard: true };
    const open = { ...entry, home: null, timeS: null, loss: "", day: "", note: "" };
    const rest = [
      ...(["pseudo", "python", "c"] as const).map((language) => listing(steps, language)),
      JSON.stringify([stepRows(steps), stepJson(steps)]),
      practiceCard({ ...project, name: "Halle" }, id, [open]),
      poster({
        project,
        routine,
        successRate: facts.evidence.summary.successRate,
        durationS: 60,
        way: NO_WAY,
        run: 3,
      }),
    ];
    for (const text of [...sheets, ...rest]) expect(english(text)).toEqual([]);
    expect(sheets[0]).toContain('<html lang="de">');
    expect(rest[0]).toMatch(/^ *1\. .*(vorwärts|rückwärts|drehen|fahren)/m);
  });

  it("is told from English: the English ones are found", () => {
    expect(english(jurySheet(list, USUAL_SHEET)).length).toBeGreaterThan(20);
    expect(english(practiceCard({ ...usual, name: "Hall" }, "x", [])).length).toBeGreaterThan(1);
  });
});

it("holds no colour but greys", () => {
  for (const pages of [1, 2] as const) {
    const html = jurySheet(list, { ...USUAL_SHEET, pages });
    const colours = [...html.matchAll(/(?:color|background|fill|stroke)[:=]"? ?(#?\w+)/g)].map(
      ([, name]) => name,
    );
    expect(colours.length).toBeGreaterThan(20);
    for (const colour of colours) expect(colour).toMatch(/^(#(.)\2\2|currentColor|none|url|light)$/);
  }
});
