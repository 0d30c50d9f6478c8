import { type PushField, pushField } from "../plan/push/pushField.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { loadProject } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface PocketsInput {
  readonly project: string | null;
  readonly json: boolean;
}

/** `wedgeward pockets`. @returns the exit code */
export function pocketsCommand(input: PocketsInput): number {
  const parsed = loadProject(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const field = pushField(parsed.value);
  if (input.json) {
    const { radiusMm, columns, rows, stepXMm, stepYMm, summary } = field;
    printJson({ project: parsed.value.name, radiusMm, columns, rows, stepXMm, stepYMm, ...summary });
  } else print(pocketsText(parsed.value.name, field));
  return FINE;
}

function pocketsText(name: string, { summary, columns, rows, radiusMm }: PushField): string {
  const { homeMm2, noPushMm2, deadLowMm2, deadHighMm2, meanSeconds, slowestSeconds } = summary;
  const floor = homeMm2 + noPushMm2 + deadLowMm2;
  const row = (what: string, mm2: number): readonly string[] => [
    what,
    `${cm2(mm2)} cm²`,
    floor > 0 ? `${((100 * mm2) / floor).toFixed(1)} %` : "",
  ];
  return [
    `${name}: where a ball of ${(2 * radiusMm).toFixed(0)} mm can lie, and what pushing can do for it (${columns} × ${rows} places, every 5°)`,
    "",
    tableText(
      [
        row("pushed home", homeMm2),
        row("no clean push, only a lucky bounce", noPushMm2),
        row("dead: out of the robot's reach", deadLowMm2),
      ],
      [false, true, true],
    ),
    "",
    deadHighMm2 > deadLowMm2
      ? `Dead for certain is ${cm2(deadLowMm2)} cm², at most ${cm2(deadHighMm2)} cm².`
      : `The dead area is known exactly: ${cm2(deadLowMm2)} cm².`,
    homeMm2 > 0
      ? `Once the robot is behind the ball it takes ${meanSeconds.toFixed(1)} s on average, ${slowestSeconds.toFixed(1)} s at most.`
      : "No ball can be pushed home.",
  ].join("\n");
}

function cm2(mm2: number): string {
  return (mm2 / 100).toFixed(mm2 < 10_000 ? 2 : 0);
}
