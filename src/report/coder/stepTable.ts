import { FUNCTIONS } from "./calls.ts";
import { DEG_DECIMALS, MM_DECIMALS, numberText, SECONDS_DECIMALS, SPEED_DECIMALS } from "./numberText.ts";
import type { CoderStep, StepSheet } from "./steps.ts";

/** Columns of the CSV file, units in their names; the call's numbers stand under the names of its params. */
const ARGUMENTS = ["mm", "extra_mm", "deg", "mm_per_s", "deg_per_s", "s"] as const;
type Argument = (typeof ARGUMENTS)[number];

const DECIMALS: Readonly<Record<Argument, number>> = {
  mm: MM_DECIMALS,
  extra_mm: MM_DECIMALS,
  deg: DEG_DECIMALS,
  mm_per_s: SPEED_DECIMALS,
  deg_per_s: SPEED_DECIMALS,
  s: SECONDS_DECIMALS,
};

/** The text of one number of a call, rounded as its unit asks. */
export function argumentText(param: Argument, value: number): string {
  return numberText(value, DECIMALS[param]);
}

/** A call's numbers with the names of their params. */
export function namedArguments({ call }: CoderStep): ReadonlyMap<Argument, number> {
  const { params } = FUNCTIONS[call.name];
  return new Map(params.map((param, i) => [param, call.args[i] ?? 0]));
}

/** Rows for reading: number, words, wheel degrees, seconds; the header first. */
export function stepRows({ steps }: StepSheet): readonly (readonly string[])[] {
  const rows = steps.map(({ number, words, wheels, durationS }) => [
    String(number),
    words,
    wheels === null ? "" : numberText(wheels.leftDeg, 1),
    wheels === null ? "" : numberText(wheels.rightDeg, 1),
    wheels === null ? "" : numberText(wheels.wheelDegPerS, 0),
    durationS.toFixed(2),
  ]);
  return [["step", "do", "left wheel °", "right wheel °", "°/s", "s"], ...rows];
}

/** One line a step, decimal point, comma between. */
export function stepCsv({ steps }: StepSheet): string {
  const header = [
    "step",
    "do",
    ...ARGUMENTS,
    "left_wheel_deg",
    "right_wheel_deg",
    "wheel_deg_per_s",
    "seconds",
  ];
  const lines = steps.map((step) => {
    const args = namedArguments(step);
    const { wheels } = step;
    return [
      String(step.number),
      step.call.name,
      ...ARGUMENTS.map((param) => (args.has(param) ? argumentText(param, args.get(param) ?? 0) : "")),
      ...(wheels === null
        ? ["", "", ""]
        : [
            numberText(wheels.leftDeg, DEG_DECIMALS),
            numberText(wheels.rightDeg, DEG_DECIMALS),
            numberText(wheels.wheelDegPerS, SPEED_DECIMALS),
          ]),
      numberText(step.durationS, SECONDS_DECIMALS),
    ].join(",");
  });
  return [header.join(","), ...lines].join("\n");
}

/** The sheet as plain JSON; numbers in full. */
export function stepJson(sheet: StepSheet): object {
  return {
    ...sheet,
    functions: FUNCTIONS,
    steps: sheet.steps.map((step) => ({
      number: step.number,
      words: step.words,
      call: step.call.name,
      args: Object.fromEntries(namedArguments(step)),
      wheels: step.wheels,
      durationS: step.durationS,
    })),
  };
}
