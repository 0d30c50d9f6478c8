import { COMMANDS, type CommandName, FLAGS, type FlagName } from "./flags.ts";

/**
 * What `wedgeward --help` prints, or `wedgeward COMMAND --help` of one command.
 *
 * @param about null: all commands
 */
export function helpText(fieldNames: readonly string[], about: CommandName | null): string {
  const commands = COMMANDS.filter(({ name }) => about === null || name === about);
  const explained = commands.flatMap(({ usage, help }) => [`  wedgeward ${usage}`, `      ${help}`]);
  if (about !== null) {
    const flags = commands.flatMap((command) => command.flags);
    const takesProject = commands.some(({ usage }) => usage.includes("PROJECT"));
    return [
      ...explained,
      ...(flags.length === 0 ? [] : ["", ...flagLines(flags)]),
      ...(takesProject ? ["", `PROJECT is a project file, or one of ${fieldNames.join(", ")}.`] : []),
      "",
      "`wedgeward --help` explains all commands.",
    ].join("\n");
  }
  return [
    "wedgeward: finds the routine that brings every ball onto the wedge, and says how often it works.",
    "",
    ...explained,
    "  wedgeward --help | --version",
    "  wedgeward COMMAND --help",
    "",
    ...flagLines(Object.keys(FLAGS) as readonly FlagName[]),
    "",
    "PROJECT is a project file or the name of one that ships with the tool; left out, it is the first of these:",
    ...fieldNames.map((name) => `  ${name}`),
    "",
    "Results go to standard output, progress to standard error when that is a terminal.",
    "Exit code: 0 fine, 2 bad input (everything wrong is listed), 1 a fault of the program,",
    '130 stopped with Ctrl-C (what is known so far is printed; --json adds "stopped": true).',
  ].join("\n");
}

function flagLines(names: readonly FlagName[]): readonly string[] {
  const flags = names.map((name) => [`--${name} ${FLAGS[name].value}`.trim(), FLAGS[name].help] as const);
  const width = Math.max(...flags.map(([flag]) => flag.length));
  return flags.map(([flag, help]) => `  ${flag.padEnd(width)}  ${help}`);
}
