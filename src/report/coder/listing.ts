import { FUNCTIONS, type FunctionName } from "./calls.ts";
import { DEG_DECIMALS, numberText } from "./numberText.ts";
import type { CoderStep, StepSheet } from "./steps.ts";
import { argumentText, namedArguments } from "./stepTable.ts";

export type ListingLanguage = "pseudo" | "python" | "c";

/** What one language looks like. */
interface Dialect {
  readonly comment: (text: string) => string;
  readonly constant: (name: string, value: string) => string;
  /** How a function the team writes is announced. */
  readonly declaration: (name: string, params: readonly string[], meaning: string) => readonly string[];
  readonly begin: string;
  readonly call: (name: string, args: readonly string[], remark: string) => string;
  readonly end: readonly string[];
}

const PYTHON: Dialect = {
  comment: (text) => (text === "" ? "#" : `# ${text}`),
  constant: (name, value) => `${name} = ${value}`,
  declaration: (name, params, meaning) => [`#   ${name}(${params.join(", ")})`, `#       ${meaning}`],
  begin: "def routine():",
  call: (name, args, remark) => `    ${`${name}(${args.join(", ")})`.padEnd(34)}  # ${remark}`,
  end: [],
};

const C: Dialect = {
  comment: (text) => `// ${text}`.trimEnd(),
  constant: (name, value) => `#define ${name} ${value}`,
  declaration: (name, params, meaning) => [
    `void ${name}(${params.map((param) => `double ${param}`).join(", ")});`,
    `    // ${meaning}`,
  ],
  begin: "void routine(void) {",
  call: (name, args, remark) => `    ${`${name}(${args.join(", ")});`.padEnd(34)}  // ${remark}`,
  end: ["}"],
};

/** The routine as a program, or as numbered sentences. */
export function listing(sheet: StepSheet, language: ListingLanguage): string {
  switch (language) {
    case "pseudo":
      return sentences(sheet);
    case "python":
      return program(sheet, PYTHON);
    case "c":
      return program(sheet, C);
    default:
      return language satisfies never;
  }
}

function heading({ project, routine, robot, durationS, steps }: StepSheet): readonly string[] {
  return [
    `${routine.id}: ${routine.label}`,
    `${robot} in ${project}; ${steps.length} steps, ${durationS.toFixed(1)} s`,
  ];
}

function sentences(sheet: StepSheet): string {
  const width = String(sheet.steps.length).length;
  return [
    ...heading(sheet),
    "",
    ...sheet.steps.map(({ number, words }) => `${String(number).padStart(width)}. ${words}`),
  ].join("\n");
}

function program(sheet: StepSheet, dialect: Dialect): string {
  const { gain, steps, accelMmPerS2 } = sheet;
  const { comment, constant, declaration } = dialect;
  const used = (Object.keys(FUNCTIONS) as FunctionName[]).filter((name) =>
    steps.some(({ call }) => call.name === name),
  );
  return [
    ...heading(sheet).map(comment),
    comment(""),
    comment("Wheel degrees of this robot; they make up for the mean drift in its project file."),
    comment("A straight: both wheels turn mm * WHEEL_DEG_PER_MM, each times its factor."),
    comment("A turn: one wheel turns deg * WHEEL_DEG_PER_TURN_DEG forward, the other back."),
    comment(
      `Every move starts and ends at rest; wheels speed up and brake at ${numberText(accelMmPerS2, 0)} mm/s^2.`,
    ),
    comment("A curve: the degrees of both wheels stand behind the step."),
    constant("WHEEL_DEG_PER_MM", numberText(gain.wheelDegPerMm, DEG_DECIMALS + 1)),
    constant("WHEEL_DEG_PER_TURN_DEG", numberText(gain.wheelDegPerTurnDeg, DEG_DECIMALS + 1)),
    constant("LEFT_FACTOR", numberText(gain.leftFactor, DEG_DECIMALS + 2)),
    constant("RIGHT_FACTOR", numberText(gain.rightFactor, DEG_DECIMALS + 2)),
    "",
    comment("Write these functions for your robot; each returns when its move is over:"),
    ...used.flatMap((name) => declaration(name, FUNCTIONS[name].params, FUNCTIONS[name].meaning)),
    "",
    dialect.begin,
    ...steps.map((step) => dialect.call(step.call.name, textsOf(step), remark(step))),
    ...dialect.end,
  ].join("\n");
}

function textsOf(step: CoderStep): readonly string[] {
  return [...namedArguments(step)].map(([param, value]) => argumentText(param, value));
}

function remark({ number, wheels, words }: CoderStep): string {
  if (wheels === null) return `${number}: ${words}`;
  const degrees = [wheels.leftDeg, wheels.rightDeg].map((turn) => numberText(turn, 1)).join(" and ");
  return `${number}: wheels ${degrees} deg`;
}
