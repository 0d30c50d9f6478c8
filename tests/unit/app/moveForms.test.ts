import { describe, expect, it } from "vitest";
import { moveForm, moveKindsFor } from "../../../src/app/routine/moveForms.ts";
import { MOVE_KINDS } from "../../../src/model/choices.ts";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { editMovesTexts } from "../../../src/texts/english/editMoves.ts";
import { shippedProject, shippedText } from "../../support/projectFiles.ts";

const fixed = shippedProject("usual-zone.json").robot;
const hinged = shippedProject("swinging-arms.json").robot;
const nothingYet = (_: string, other: number) => other;

describe("the form of a move made one of another kind", () => {
  it.each(MOVE_KINDS)("%s is a sound move of that kind, with words for it", (kind) => {
    expect(editMovesTexts.kinds[kind]).toMatch(/\w/);
    const file = JSON.parse(shippedText("swinging-arms.json"));
    const moves = [moveForm(kind, hinged, nothingYet)];
    const routines = [{ id: "own-1", label: "one", moves }];
    const read = parseProjectFile(JSON.stringify({ ...file, routines }));
    expect(read.ok && read.value.routines[0]?.moves.map((move) => move.kind)).toEqual([kind]);
  });

  it("keeps what the two have in common", () => {
    const made = moveForm("toWall", fixed, (key, other) => (key === "distanceMm" ? -250 : other));
    expect(made).toEqual({ kind: "toWall", distanceMm: -250, speedMmPerS: 200, overrunMm: -40 });
  });

  it("swings arms for as long as they take, and offers it only where they swing", () => {
    expect(moveForm("arms", hinged, nothingYet)).toMatchObject({ kind: "arms", to: "closed" });
    expect(moveKindsFor(hinged, "drive")).toContain("arms");
    expect(moveKindsFor(fixed, "drive")).not.toContain("arms");
    expect(moveKindsFor(fixed, "arms")).toContain("arms");
  });
});
