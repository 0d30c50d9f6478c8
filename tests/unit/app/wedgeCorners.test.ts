import { expect, it } from "vitest";
import type { Form } from "../../../src/app/project/form.ts";
import { otherCorners, withOtherCorner } from "../../../src/app/steps/wedgeCorners.ts";
import { parseProject } from "../../../src/model/parse.ts";
import { shippedText } from "../../support/projectFiles.ts";

it("corners of the day come with the wedge's own, and go without a trace", () => {
  const before = JSON.parse(shippedText("usual-zone.json")) as Form;
  const corners = (form: Form) => {
    const read = parseProject(JSON.stringify(form));
    return read.ok ? read.value.rules.wedgeCorners : read.issues;
  };
  const more = withOtherCorner(before, "upper-left", true);
  expect(corners(more)).toEqual(["upper-left", "upper-right"]);
  expect(otherCorners(more)).toEqual(["upper-left"]);
  expect(withOtherCorner(more, "upper-left", false)).toEqual(before);
  expect(otherCorners({ ...before, rules: { wedgeCorners: "all" } })).toEqual([]);
});
