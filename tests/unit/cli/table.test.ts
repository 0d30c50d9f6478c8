import { expect, it } from "vitest";
import { tableText } from "../../../src/cli/table.ts";

it("lines up columns, numbers to the right, and leaves no blanks at the ends", () => {
  const rows = [
    ["balls home", "runs"],
    ["0 of 3", "7"],
    ["3 of 3", "1992"],
  ];
  expect(tableText(rows, [false, true])).toBe("balls home  runs\n0 of 3         7\n3 of 3      1992");
  expect(tableText([["a", ""]], [false, false])).toBe("a");
});
