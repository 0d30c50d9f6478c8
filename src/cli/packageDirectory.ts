import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The directory with package.json and fields/, from wherever this program text was bundled to. */
export function packageDirectory(): string {
  let directory = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(directory, "package.json"))) {
    const parent = dirname(directory);
    if (parent === directory) throw new Error("package.json was not found above the program");
    directory = parent;
  }
  return directory;
}

export function packageVersion(): string {
  const { version } = JSON.parse(readFileSync(join(packageDirectory(), "package.json"), "utf8")) as {
    readonly version: string;
  };
  return version;
}
