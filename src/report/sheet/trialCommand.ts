import { escaped } from "../charts/svg.ts";
import type { SheetFacts } from "./sheetFacts.ts";

/** The command that runs one of a sheet's trials again, ready for HTML. */
export function trialCommand({ routine, projectArgument }: SheetFacts, options: string): string {
  const named = /^[\w./\\:-]*$/.test(projectArgument) ? projectArgument : `"${projectArgument}"`;
  const project = named === "" ? "" : ` ${named}`;
  return escaped(`wedgeward trial${project} --routine ${routine.id} ${options}`);
}
