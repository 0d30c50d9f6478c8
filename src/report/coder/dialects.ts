import type { FunctionName, ReadingName } from "./functions.ts";
import type { QuestionDialect } from "./questions.ts";

/** What one programming language looks like; every text is a line without its indent. */
export interface Dialect extends QuestionDialect {
  readonly comment: (text: string) => string;
  readonly constant: (name: string, value: string) => string;
  /** How a function the team writes is announced. */
  readonly declaration: (
    name: FunctionName | ReadingName,
    params: readonly string[],
    gives: "nothing" | "number" | "truth",
    meaning: readonly string[],
  ) => readonly string[];
  readonly begin: string;
  readonly call: (name: string, args: readonly string[]) => string;
  /** Rounds counted by a variable of this name. */
  readonly rounds: (counter: string, atMost: number) => string;
  /** Lines that leave the rounds where a condition holds. */
  readonly leave: (condition: string, indent: string) => readonly string[];
  readonly branch: (condition: string) => string;
  readonly otherwise: string;
  /** What ends a block; null: the indent does. */
  readonly close: string | null;
  /** What stands in a block in which nothing is done; null: nothing. */
  readonly nothing: string | null;
  readonly remark: (text: string) => string;
}

export const PYTHON: Dialect = {
  not: "not ",
  comment: (text) => (text === "" ? "#" : `# ${text}`),
  constant: (name, value) => `${name} = ${value}`,
  declaration: (name, params, _, meaning) => [
    `#   ${name}(${params.join(", ")})`,
    ...meaning.map((line) => `#       ${line}`),
  ],
  begin: "def routine():",
  call: (name, args) => `${name}(${args.join(", ")})`,
  rounds: (counter, atMost) => `for ${counter} in range(${atMost}):`,
  leave: (condition, indent) => [`if ${condition}:`, `${indent}break`],
  branch: (condition) => `if ${condition}:`,
  otherwise: "else:",
  close: null,
  nothing: "pass",
  remark: (text) => `# ${text}`,
};

const C_TYPES = { nothing: "void", number: "double", truth: "int" } as const;

export const C: Dialect = {
  not: "!",
  comment: (text) => `// ${text}`.trimEnd(),
  constant: (name, value) => `#define ${name} ${value}`,
  declaration: (name, params, gives, meaning) => [
    `${C_TYPES[gives]} ${name}(${params.length === 0 ? "void" : params.map((param) => `${typeOf(param)} ${param}`).join(", ")});`,
    ...meaning.map((line) => `    // ${line}`),
  ],
  begin: "void routine(void) {",
  call: (name, args) => `${name}(${args.join(", ")});`,
  rounds: (counter, atMost) => `for (int ${counter} = 0; ${counter} < ${atMost}; ${counter}++) {`,
  leave: (condition) => [`if (${condition}) break;`],
  branch: (condition) => `if (${condition}) {`,
  otherwise: "} else {",
  close: "}",
  nothing: null,
  remark: (text) => `// ${text}`,
};

function typeOf(param: string): string {
  return ["corner", "sensor", "by_sensor"].includes(param) ? "int" : "double";
}
