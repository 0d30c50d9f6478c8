import type { Project } from "../model/project.ts";
import { sensorOf } from "../model/sensor.ts";
import { wedgeStopsRobot } from "../motion/surroundings.ts";

/** Which routines that sense there are, by id; what makes them is fetched with the first of them. */

/** The blind sweeps that may follow the search, by id without speed; the one that does best depends on the zone. */
export const TAILS = { none: "", herd: "herd-all-c2-q-b", fan: "fan-n5-c2-q" } as const;
export type Tail = keyof typeof TAILS;
const TAIL_NAMES: readonly Tail[] = ["none", "herd", "fan"];

/** By looking into each corner from in front of it, or by following the walls from corner to corner. */
export type FindBy = "find" | "wall";

export interface SensingPlan {
  /** With a known corner; or after looking into each corner; or after following the walls from corner to corner. */
  readonly how: "look" | FindBy;
  readonly places: number;
  readonly tail: Tail;
}

/** Routines that sense, for robots that can; none for the others. Ids are stable. */
export function sensingIds(project: Project): readonly string[] {
  const { sensors } = project.robot;
  const finds = project.rules.wedgeCorners.length > 1;
  const hows: readonly SensingPlan["how"][] = finds ? findsBy(project) : ["look"];
  const sees = sensorOf(sensors, "distance") !== undefined;
  const places = sees ? [1, 2] : finds ? [0] : [];
  return hows.flatMap((how) =>
    places.flatMap((count) =>
      TAIL_NAMES.filter((tail) => tail !== "none" || count > 0).map((tail) => `${how}-n${count}-${tail}`),
    ),
  );
}

/** @returns null for an id that is none of the project's */
export function sensingPlan(project: Project, id: string): SensingPlan | null {
  if (!sensingIds(project).includes(id)) return null;
  const [, how, places, tail] = id.match(/^(find|wall|look)-n(\d)-(\w+)$/) ?? [];
  return { how: how as SensingPlan["how"], places: Number(places), tail: tail as Tail };
}

/** The ways to find the wedge that a robot has sensors for. */
export function findsBy({ robot, zone }: Project): readonly FindBy[] {
  if (sensorOf(robot.sensors, "floor") !== undefined) return ["find", "wall"];
  const bumps = robot.sensors.some((sensor) => sensor.kind === "bump" && sensor.side === "front");
  return bumps && wedgeStopsRobot(zone, robot) ? ["wall"] : [];
}
