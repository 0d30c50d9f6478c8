import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

interface BrowserKind {
  readonly name: string;
  /** Environment variable that names the program. */
  readonly variable: string;
  readonly places: readonly string[];
  /** Debian's packages, each of which would do, best first. */
  readonly aptPackages: readonly string[];
}

const KINDS = {
  chromium: {
    name: "Chromium",
    variable: "CHROMIUM",
    // The shell without windows first: a window of its own for each test costs a second or two of processor time.
    places: [
      "/usr/bin/chromium-headless-shell",
      "/usr/bin/chromium",
      "/usr/bin/chromium-browser",
      "/usr/bin/google-chrome-stable",
      "/usr/bin/google-chrome",
      "/snap/bin/chromium",
      "/Applications/Chromium.app/Contents/MacOS/Chromium",
      "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    ],
    aptPackages: ["chromium-headless-shell", "chromium"],
  },
  firefox: {
    name: "Firefox",
    variable: "FIREFOX",
    places: ["/usr/bin/firefox-esr", "/usr/bin/firefox", "/Applications/Firefox.app/Contents/MacOS/firefox"],
    aptPackages: ["firefox-esr"],
  },
} as const satisfies Record<string, BrowserKind>;

/** What the search for a browser looks at, so that the search can be tested. */
export interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>;
  exists(path: string): boolean;
  /** Whether packages may be installed here. */
  readonly mayInstall: boolean;
  /** Runs a command; null when all went well, else what it said. */
  run(command: string, args: readonly string[]): string | null;
}

export const thisMachine: Machine = {
  env: process.env,
  exists: existsSync,
  mayInstall: process.getuid?.() === 0 && existsSync("/usr/bin/apt-get"),
  run: (command, args) => {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    const { status, stderr, error } = spawnSync(command, args, { encoding: "utf8", env });
    return status === 0 ? null : (error?.message ?? stderr);
  },
};

/**
 * Path of a browser's program. Where there is none, installs it when that is allowed.
 * @throws Error that says what to install
 */
export function browserPath(kind: keyof typeof KINDS, machine: Machine = thisMachine): string {
  const { name, variable, places, aptPackages }: BrowserKind = KINDS[kind];
  const named = machine.env[variable];
  if (named) {
    if (machine.exists(named)) return named;
    throw new Error(`${variable} is ${named}, but there is no such file.`);
  }
  const find = (): string | undefined => places.find((path) => machine.exists(path));
  const found = find();
  if (found) return found;
  const remedy = `Install ${name} (on Debian: apt-get install ${aptPackages.at(-1)}) or set ${variable} to its program.`;
  if (!machine.mayInstall) throw new Error(`The browser tests need ${name}. ${remedy}`);
  let fault = machine.run("apt-get", ["update"]);
  for (const aptPackage of fault === null ? aptPackages : []) {
    fault = machine.run("apt-get", ["install", "-y", "--no-install-recommends", aptPackage]);
    const installed = find();
    if (fault === null && installed) return installed;
  }
  throw new Error(`${name} could not be installed: ${fault ?? "it is not where it should be"}. ${remedy}`);
}
