import { expect, it } from "vitest";
import type { Form } from "../../../src/app/project/form.ts";
import { withProfile } from "../../../src/app/steps/wedgeProfile.ts";
import { WEDGE_PROFILES } from "../../../src/model/choices.ts";
import { parseProject } from "../../../src/model/parse.ts";
import { SHIPPED, shippedText } from "../../support/projectFiles.ts";

const wedgeOf = (form: Form) => {
  const read = parseProject(JSON.stringify(form));
  return read.ok ? read.value.zone.wedge : read.issues;
};

it("a zone stays sound whatever profile is chosen for its wedge, one after the other", () => {
  for (const name of SHIPPED) {
    let form = JSON.parse(shippedText(name)) as Form;
    for (const first of WEDGE_PROFILES) {
      for (const profile of [first, ...WEDGE_PROFILES]) {
        form = withProfile(form, profile);
        expect(wedgeOf(form), `${name}, ${first} to ${profile}`).toMatchObject({ profile });
      }
    }
  }
});

it("heights that make the profile are kept, and a flat mark has none", () => {
  const shelf = JSON.parse(shippedText("usual-zone.json")) as Form;
  expect(wedgeOf(withProfile(shelf, "ramp"))).toMatchObject({ lipMm: 1, riseMm: 5 });
  expect(wedgeOf(withProfile(shelf, "flat"))).toMatchObject({ lipMm: 0, riseMm: 0 });
  expect(wedgeOf(withProfile(withProfile(shelf, "flat"), "tray"))).toMatchObject({ lipMm: 1, riseMm: 0 });
});
