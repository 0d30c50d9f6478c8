import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".txt": "text/plain; charset=utf-8",
};

/**
 * The page may load from its own server only, and run no program text made at run time. Styles set in markup, and
 * pictures and workers the page makes itself (blob:, data:), are allowed.
 */
const HEADERS: Readonly<Record<string, string>> = {
  "Content-Security-Policy": [
    "default-src 'self'",
    "script-src 'self'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "connect-src 'self' data: blob:",
    "worker-src 'self' blob:",
    "media-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
};

export interface Site {
  /** Like http://127.0.0.1:4632/ */
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves the files of a directory on this machine only.
 *
 * @param port 0 for any free one; one that is taken is replaced by any free one
 * @throws the system's error when no port can be had
 */
export async function serve(directory: string, port: number): Promise<Site> {
  const server = createServer((request, response) => {
    answer(directory, request, response).catch(() => end(response, 500, "The server failed."));
  });
  await listen(server, port).catch((fault: NodeJS.ErrnoException) => {
    if (fault.code !== "EADDRINUSE" || port === 0) throw fault;
    return listen(server, 0);
  });
  const { port: actual } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${actual}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      resolve();
    });
  });
}

async function answer(directory: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== "GET" && request.method !== "HEAD") return end(response, 405, "Only reading.");
  // A page of another site could otherwise reach this server under a name of its own.
  if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? "")) {
    return end(response, 403, "This server answers to 127.0.0.1 and localhost only.");
  }
  const file = fileFor(directory, request.url ?? "/");
  const found = file === null ? null : await stat(file).catch(() => null);
  if (file === null || !found?.isFile()) return end(response, 404, "Not found.");
  response.writeHead(200, {
    ...HEADERS,
    "Content-Type": TYPES[extname(file)] ?? "application/octet-stream",
    "Content-Length": found.size,
    // Files under assets/ carry a hash of their content in the name.
    "Cache-Control": file.includes(`${sep}assets${sep}`) ? "max-age=31536000, immutable" : "no-cache",
  });
  if (request.method === "HEAD") {
    response.end();
    return;
  }
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

/** The file a URL asks for; null when it leads out of the directory or is no URL. */
function fileFor(directory: string, url: string): string | null {
  try {
    const path = decodeURIComponent(new URL(url, "http://127.0.0.1").pathname);
    const file = normalize(join(directory, path.endsWith("/") ? `${path}index.html` : path));
    return file.startsWith(directory + sep) && !file.includes("\0") ? file : null;
  } catch {
    return null;
  }
}

function end(response: ServerResponse, status: number, text: string): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.writeHead(status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${text}\n`);
}
