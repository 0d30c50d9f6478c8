import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Site, serve } from "../../../src/cli/serve.ts";

let top: string;
let site: Site;

beforeAll(async () => {
  top = mkdtempSync(join(tmpdir(), "serve-"));
  mkdirSync(join(top, "page/assets"), { recursive: true });
  writeFileSync(join(top, "secret.txt"), "secret");
  writeFileSync(join(top, "page/index.html"), "<title>zone</title>");
  writeFileSync(join(top, "page/assets/main-1a2b.js"), "export {};");
  site = await serve(join(top, "page"), 0);
});
afterAll(async () => {
  await site.close();
  rmSync(top, { recursive: true });
});

/** The path goes out as it stands: fetch would tidy it. */
function get(
  path: string,
  options: { method?: string; host?: string } = {},
): Promise<{
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}> {
  const { port } = new URL(site.address);
  const headers = { Host: options.host ?? `127.0.0.1:${port}` };
  return new Promise((resolve, reject) => {
    request({ port, path, method: options.method ?? "GET", headers, agent: false }, (response) => {
      let body = "";
      response.on("data", (part) => {
        body += part;
      });
      response.on("end", () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    })
      .on("error", reject)
      .end();
  });
}

describe("the server of the page", () => {
  it("serves the page at its root, checked again on each visit", async () => {
    const { status, headers, body } = await get("/");
    expect([status, body]).toEqual([200, "<title>zone</title>"]);
    expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(headers["cache-control"]).toBe("no-cache");
  });

  it("forbids program text made at run time, and everything from elsewhere", async () => {
    const policy = String((await get("/")).headers["content-security-policy"]).split("; ");
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("script-src 'self'");
  });

  it("serves scripts as scripts, for good", async () => {
    const { headers } = await get("/assets/main-1a2b.js?x=1");
    expect(headers["content-type"]).toBe("text/javascript; charset=utf-8");
    expect(headers["cache-control"]).toContain("immutable");
  });

  it("answers HEAD without a body", async () => {
    const { status, headers, body } = await get("/", { method: "HEAD" });
    expect([status, headers["content-length"], body]).toEqual([200, "19", ""]);
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/assets/..%5c..%5csecret.txt",
    "/%00",
    "/%zz",
    "/none",
    "/assets",
  ])("does not find %s", async (path) => {
    const { status, body } = await get(path);
    expect([status, body]).toEqual([404, "Not found.\n"]);
  });

  it("takes no other methods", async () => {
    expect((await get("/", { method: "POST" })).status).toBe(405);
  });

  it("does not answer under another name", async () => {
    expect((await get("/", { host: "elsewhere.example" })).status).toBe(403);
  });

  it("takes another port when the wanted one is taken", async () => {
    const second = await serve(join(top, "page"), Number(new URL(site.address).port));
    expect(second.address).not.toBe(site.address);
    await second.close();
  });
});
