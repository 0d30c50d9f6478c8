import { cpSync, readdirSync, symlinkSync } from "node:fs";
import { join, sep } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { startCommand } from "../support/command.ts";
import { top } from "../support/sourceCheck.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

let copy: string;

beforeAll(() => {
  copy = tempDirectory() + sep;
  for (const name of [
    "src",
    "fields",
    "package.json",
    "package-lock.json",
    "vite.config.ts",
    "tsconfig.json",
  ]) {
    cpSync(join(top, name), join(copy, name), { recursive: true });
  }
  symlinkSync(join(top, "node_modules"), join(copy, "node_modules"));
});

describe("the command in a fresh copy", () => {
  it("builds itself, also when it is started twice at once", async () => {
    const runs = await Promise.all(
      ["--version", "--version"].map((flag) => startCommand([flag], copy).ended),
    );
    for (const run of runs) expect(run).toEqual({ code: 0, stdout: "0.1.0\n", stderr: "" });
    expect(readdirSync(join(copy, "dist/node"))).toHaveLength(1);
    expect(readdirSync(join(copy, "dist/tmp"))).toEqual([]);
  });
});

describe("npm start", () => {
  it("ranks the default project with its progress, then serves the page until Ctrl-C", async () => {
    const running = startCommand(["start"]);
    const address = (await running.printed(/http:\/\/127\.0\.0\.1:\d+\//))[0];
    const page = await fetch(address);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain("<title>Wedgeward");
    running.child.kill("SIGINT");
    const { code, stdout, stderr } = await running.ended;
    expect(code).toBe(0);
    expect(stdout).toMatch(/^ *1 .* of 100 runs/m);
    expect(stderr).toMatch(/^ *\d+ % \d+ of about \d+ trials; best so far/m);
  });

  it("stopped while it ranks prints the ranking so far", async () => {
    const running = startCommand(["start"]);
    await running.printed(/ % .*best so far/);
    running.child.kill("SIGINT");
    const { code, stdout } = await running.ended;
    expect(code).toBe(130);
    expect(stdout).toContain("Stopped early");
    expect(stdout).toMatch(/^ *1 .* of 100 runs/m);
  });
});
