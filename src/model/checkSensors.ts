import { issueTexts } from "../texts/english/issue.ts";
import { robotIssueTexts as t } from "../texts/english/robotIssue.ts";
import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import type { Sensor } from "./sensor.ts";

/** What contradicts itself among a robot's sensors. */
export function checkSensors(sensors: readonly Sensor[]): readonly Issue[] {
  return sensors.flatMap((sensor, i) => [
    ...checkRange(sensor, `robot.sensors[${i}]`),
    ...checkTwice(sensors, i),
  ]);
}

function checkRange(sensor: Sensor, path: string): readonly Issue[] {
  if (sensor.kind !== "distance" || sensor.nearestMm < sensor.rangeMm) return [];
  const message = t.seesNothing;
  const expected = issueTexts.above(mm(sensor.nearestMm));
  return [{ code: "empty-range", path: `${path}.rangeMm`, message, got: mm(sensor.rangeMm), expected }];
}

/** Two distance sensors look in two directions; of the others a second one tells nothing that routines could use. */
function checkTwice(sensors: readonly Sensor[], i: number): readonly Issue[] {
  const sensor = sensors[i];
  if (sensor === undefined || sensor.kind === "distance") return [];
  const same = (other: Sensor) =>
    other.kind === sensor.kind &&
    (other.kind !== "bump" || sensor.kind !== "bump" || other.side === sensor.side);
  const first = sensors.findIndex(same);
  if (first === i) return [];
  const path = `robot.sensors[${i}]`;
  const got = t.sameAs(`robot.sensors[${first}]`);
  return [{ code: "repeated-sensor", path, message: t.sensorTwice, got, expected: t.one }];
}
