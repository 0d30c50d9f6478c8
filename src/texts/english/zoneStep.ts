import { topic } from "../language.ts";

/** The step in which the zone is described. */
export const zoneStepTexts = topic("zoneStep", {
  title: "The zone",
  hint: "Measure the real floor with a tape. Type a number, or drag the handles on the drawing.",
  walls: "Walls",
  width: "From left to right, inside",
  height: "From front to back, inside",
  doorway: "Doorway",
  doorwayWall: "In which wall",
  doorwayMiddle: "Its middle, from the wall’s left or lower end",
  doorwayWidth: "Width",
  wedge: "Wedge",
  wedgeCorner: "In which corner",
  wedgeLegX: "Along the lower or upper wall",
  wedgeLegY: "Along the left or right wall",
  wedgeProfile: "Seen from the side",
  wedgeLip: "Lip at its long side",
  wedgeRise: "Height at its end",
  wedgeRun: "Length of the ramp",
  keepOuts: "Keep-outs",
  keepOut: "Keep-out",
  keepOutAbout: "keep-outs matter",
  keepOutWhy: "A keep-out is a solid block on the floor, like a pillar: neither robot nor ball can enter it.",
  nameAndNotes: "Name and notes",
  name: "Name of the project",
  notes: "Notes: who measured, when, what is not sure",
});
