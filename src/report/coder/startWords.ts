import { degFromRad } from "../../model/degrees.ts";
import type { Project } from "../../model/project.ts";
import { listingTexts as t } from "../../texts/english/listing.ts";
import { DEG_DECIMALS, MM_DECIMALS, readNumber } from "./numberText.ts";

/** Where the robot has to stand when the routine begins, and how: the steps are true from there only. */
export function startWords({ zone, robot }: Pick<Project, "zone" | "robot">): string {
  const { alongMm, insetMm, headingRad } = robot.entry;
  const { wall } = zone.doorway;
  const way =
    wall === "left" || wall === "right" ? (alongMm > 0 ? "up" : "down") : alongMm > 0 ? "right" : "left";
  const mm = (value: number): string => readNumber(Math.abs(value), MM_DECIMALS);
  const deg = readNumber(Math.abs(degFromRad(headingRad)), DEG_DECIMALS);
  return t.start(
    `${insetMm < 0 ? "−" : ""}${mm(insetMm)}`,
    alongMm === 0 ? t.inMiddle : t.aside[way](mm(alongMm)),
    headingRad === 0 ? t.straightIn : t.turnedIn(headingRad < 0, deg),
    robot.shape.kind === "hinged" ? t.armsOpen : "",
  );
}
