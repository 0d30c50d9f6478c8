import { describe, expect, it } from "vitest";
import { browserPath, type Machine } from "../../support/browsers.ts";

/** A machine with these files; installing adds one. */
function machine(
  options: Partial<Machine> & { files?: string[]; installs?: string; fault?: string },
): Machine & {
  readonly commands: string[];
} {
  const files = [...(options.files ?? [])];
  const commands: string[] = [];
  return {
    env: options.env ?? {},
    mayInstall: options.mayInstall ?? false,
    exists: (path) => files.includes(path),
    run: (command, args) => {
      commands.push([command, ...args].join(" "));
      if (args[0] === "install" && options.fault !== undefined) return options.fault;
      if (args[0] === "install" && options.installs) files.push(options.installs);
      return null;
    },
    commands,
  };
}

describe("the search for a browser", () => {
  it("takes the one the environment names, before any other", () => {
    const files = ["/opt/own/chromium", "/usr/bin/chromium"];
    expect(browserPath("chromium", machine({ files, env: { CHROMIUM: "/opt/own/chromium" } }))).toBe(
      "/opt/own/chromium",
    );
  });

  it("does not take another when the named one is not there", () => {
    const here = machine({ files: ["/usr/bin/chromium"], env: { CHROMIUM: "/nowhere" } });
    expect(() => browserPath("chromium", here)).toThrow("CHROMIUM is /nowhere");
  });

  it("finds one in the usual places", () => {
    expect(browserPath("chromium", machine({ files: ["/usr/bin/google-chrome"] }))).toBe(
      "/usr/bin/google-chrome",
    );
    expect(browserPath("firefox", machine({ files: ["/usr/bin/firefox-esr"] }))).toBe("/usr/bin/firefox-esr");
  });

  it("installs it where it may", () => {
    const here = machine({ mayInstall: true, installs: "/usr/bin/chromium-headless-shell" });
    expect(browserPath("chromium", here)).toBe("/usr/bin/chromium-headless-shell");
    expect(here.commands).toEqual([
      "apt-get update",
      "apt-get install -y --no-install-recommends chromium-headless-shell",
    ]);
  });

  it("tries what would do as well where the first package cannot be had", () => {
    const here = machine({ mayInstall: true, fault: "no such package" });
    expect(() => browserPath("chromium", here)).toThrow("could not be installed: no such package");
    expect(
      here.commands
        .filter((command) => command.includes(" install "))
        .map((command) => command.split(" ").at(-1)),
    ).toEqual(["chromium-headless-shell", "chromium"]);
  });

  it("says what to install where it may not", () => {
    const here = machine({});
    expect(() => browserPath("chromium", here)).toThrow(/need Chromium.*apt-get install chromium/);
    expect(here.commands).toEqual([]);
  });

  it("says what went wrong where installing failed", () => {
    const here = machine({ mayInstall: true, fault: "no network" });
    expect(() => browserPath("firefox", here)).toThrow(/could not be installed: no network.*firefox-esr/);
  });
});
