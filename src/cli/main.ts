import { parseArguments } from "./args.ts";
import { calibrateCommand } from "./calibrateCommand.ts";
import { checkCommand } from "./checkCommand.ts";
import { compareCommand } from "./compareCommand.ts";
import { fixCommand } from "./fixCommand.ts";
import { helpText } from "./help.ts";
import { FINE, print, reject } from "./output.ts";
import { packageVersion } from "./packageDirectory.ts";
import { planCommand } from "./planCommand.ts";
import { pocketsCommand } from "./pocketsCommand.ts";
import { practiceCommand } from "./practiceCommand.ts";
import { fieldNames } from "./projectFile.ts";
import { pushCommand } from "./pushCommand.ts";
import { sensorsCommand } from "./sensorsCommand.ts";
import { sheetCommand } from "./sheetCommand.ts";
import { startCommand } from "./startCommand.ts";
import { stepsCommand } from "./stepsCommand.ts";
import { stressCommand } from "./stressCommand.ts";
import { trialCommand } from "./trialCommand.ts";
import { weakCommand } from "./weakCommand.ts";

/**
 * The `wedgeward` command.
 *
 * @param argv the words after the program's name
 * @param cores threads used when none are asked for
 * @returns the exit code; rejects with a fault of the program
 */
export async function main(argv: readonly string[], cores: number): Promise<number> {
  const parsed = parseArguments(argv, cores);
  if (!parsed.ok) return reject("the command line", parsed.issues, argv.includes("--json"));
  const invocation = parsed.value;
  switch (invocation.command) {
    case "help":
      print(helpText(fieldNames(), invocation.about));
      return FINE;
    case "version":
      print(packageVersion());
      return FINE;
    case "plan":
      return planCommand(invocation);
    case "stress":
      return stressCommand(invocation);
    case "trial":
      return trialCommand(invocation);
    case "compare":
      return compareCommand(invocation);
    case "fix":
      return fixCommand(invocation);
    case "weak":
      return weakCommand(invocation);
    case "steps":
      return stepsCommand(invocation);
    case "sensors":
      return sensorsCommand(invocation);
    case "pockets":
      return pocketsCommand(invocation);
    case "push":
      return pushCommand(invocation);
    case "sheet":
      return sheetCommand(invocation);
    case "practice":
      return practiceCommand(invocation);
    case "calibrate":
      return calibrateCommand(invocation);
    case "check":
      return checkCommand(invocation);
    case "start":
      return startCommand(cores);
    default:
      return invocation satisfies never;
  }
}
