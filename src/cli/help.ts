import { COMMANDS, FLAGS } from "./flags.ts";

/** What `wedgeward --help` prints. */
export function helpText(fieldNames: readonly string[]): string {
  const flags = Object.entries(FLAGS).map(
    ([name, { value, help }]) => [`--${name} ${value}`.trim(), help] as const,
  );
  const width = Math.max(...flags.map(([flag]) => flag.length));
  return [
    "wedgeward: finds the routine that brings every ball onto the wedge, and says how often it works.",
    "",
    ...COMMANDS.flatMap(({ usage, help }) => [`  wedgeward ${usage}`, `      ${help}`]),
    "  wedgeward --help | --version",
    "",
    ...flags.map(([flag, help]) => `  ${flag.padEnd(width)}  ${help}`),
    "",
    "PROJECT is a project file or the name of one that ships with the tool; left out, it is the first of these:",
    ...fieldNames.map((name) => `  ${name}`),
    "",
    "Results go to standard output, progress to standard error when that is a terminal.",
    "Exit code: 0 fine, 2 bad input (everything wrong is listed), 1 a fault of the program,",
    '130 stopped with Ctrl-C (what is known so far is printed; --json adds "stopped": true).',
  ].join("\n");
}
