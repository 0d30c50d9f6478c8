import { ballsOf } from "../model/project.ts";
import { countWords } from "../report/lengthWords.ts";
import { issuesText } from "./issues.ts";
import { BAD_INPUT, FINE, print, printJson } from "./output.ts";
import { loadProject } from "./projectFile.ts";

export interface CheckInput {
  readonly files: readonly string[];
  readonly json: boolean;
}

/** `wedgeward check`: what is wrong is the result, and goes to standard output. @returns the exit code */
export function checkCommand({ files, json }: CheckInput): number {
  const checked = files.map((file) => ({ file, parsed: loadProject(file) }));
  if (json) {
    const list = checked.map(({ file, parsed }) => ({ file, issues: parsed.ok ? [] : parsed.issues }));
    printJson({ files: list });
  } else {
    for (const { file, parsed } of checked) {
      if (!parsed.ok) print(issuesText(file, parsed.issues));
      else {
        const { name, zone } = parsed.value;
        const balls = countWords(ballsOf(parsed.value).length, "ball");
        print(`${file}: fine (${name}, ${zone.widthMm} × ${zone.heightMm} mm, ${balls})`);
      }
    }
  }
  return checked.every(({ parsed }) => parsed.ok) ? FINE : BAD_INPUT;
}
