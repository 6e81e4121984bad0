import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, resolve } from "node:path";

const mime: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".webmanifest": "application/manifest+json",
};

export type Site = { readonly url: string; readonly port: number; readonly close: () => Promise<void> };

/** Where the build under test lies; another folder can be named, so that two builds can be tried side by side. */
export const builtFolder = (): string => process.env["DIPBOOK_DIST"] ?? "dist";

/**
 * Serves a built folder as any static host would: files as they are, index.html for every other address. A fixed
 * `port` keeps the origin, and with it what the browser has stored, over a restart.
 */
export async function serveBuilt(folder = builtFolder(), port = 0): Promise<Site> {
  const root = resolve(folder);
  if (!existsSync(join(root, "index.html")))
    throw new Error(`${folder}/index.html is missing: run \`npm run build\` first`);
  const server = createServer((request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const file = join(root, normalize(asked));
    const found =
      file.startsWith(root) && existsSync(file) && statSync(file).isFile() ? file : join(root, "index.html");
    response.writeHead(200, {
      "content-type": mime[extname(found)] ?? "application/octet-stream",
      "cache-control": "no-cache",
    });
    createReadStream(found).pipe(response);
  });
  await new Promise<void>((done, fail) => {
    server.once("error", fail);
    server.listen(port, "127.0.0.1", done);
  });
  const address = server.address() as AddressInfo;
  return {
    url: `http://localhost:${address.port}`,
    port: address.port,
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}
