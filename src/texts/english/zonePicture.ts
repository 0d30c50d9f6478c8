import { topic } from "../language.ts";

/** The picture of a zone on sheet and poster. */
export const zonePictureTexts = topic("zonePicture", {
  title: "The zone and the routine's way",
  description: (width: string, height: string, corner: string, wall: string, moves: number, balls: number) =>
    `The zone, ${width} by ${height}, from above: the wedge hatched in the ${corner} corner, the doorway in the ${wall} wall, the robot at its start, the way of ${moves} moves${balls > 0 ? ` and ${balls} balls` : ""}.`,
  walls: { left: "left", right: "right", bottom: "bottom", top: "top" },
});
