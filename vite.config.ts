import react from "@vitejs/plugin-react";
import { VitePWA } from "vite-plugin-pwa";
import { resolve } from "node:path";
import { defineConfig } from "vite";
import product from "./package.json" with { type: "json" };

type Graph = { getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null };

/** A file of `src` and all it imports, lazy imports left out. */
function withImports(file: string, graph: Graph): ReadonlySet<string> {
  const found = new Set([resolve("src", file)]);
  for (const id of found) for (const next of graph.getModuleInfo(id)?.importedIds ?? []) found.add(next);
  return found;
}

let groups: Map<string, string> | null = null;

/**
 * What the rack is drawn from comes as three files instead of one for each set of screens that share it: a phone spends
 * longer on opening eighty small files than on reading them. The plain page of a failed start is a file of its own, and
 * so is the log its backup is made from: neither may fail with the app.
 */
function startGroup(id: string, graph: Graph): string | null {
  if (groups === null) {
    const first = withImports("main.tsx", graph);
    const log = ["storage/backup/makeBackup.ts", "storage/remakeSummaries.ts"].flatMap((file) => [
      ...withImports(file, graph),
    ]);
    const inLog = new Set(log);
    const nameOf = (one: string): string => (first.has(one) ? "first" : inLog.has(one) ? "log" : "start");
    groups = new Map([...withImports("start.tsx", graph), ...first].map((one) => [one, nameOf(one)]));
    // It waits for the app, so nothing the app imports may lie in the same file: each would wait for the other.
    groups.delete(resolve("src", "main.tsx"));
  }
  return groups.get(id) ?? null;
}

/** A picture for the browser's own page that offers to install the app. */
const shot = (name: string, sizes: string, form_factor: "narrow" | "wide", label: string) => ({
  src: `screenshots/${name}.png`,
  sizes,
  type: "image/png",
  form_factor,
  label,
});

export default defineConfig({
  // Set DIPBOOK_BASE to "/some-path/" at build time when the host serves the app below a path.
  base: process.env["DIPBOOK_BASE"] ?? "/",
  define: { "import.meta.env.VITE_DIPBOOK_VERSION": JSON.stringify(product.version) },
  build: {
    target: "es2022",
    chunkSizeWarningLimit: 900,
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: startGroup }] } } },
  },
  plugins: [
    react(),
    VitePWA({
      registerType: "prompt",
      injectRegister: false,
      strategies: "injectManifest",
      srcDir: "src",
      filename: "sw.ts",
      injectManifest: {
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,webmanifest,stl}"],
        // Shown by the browser while it asks to install: of no use offline.
        globIgnores: ["screenshots/**"],
        // The sample pattern and the picture of a mesh open offline too.
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
      manifest: {
        id: "/",
        name: "Dipbook",
        short_name: "Dipbook",
        description: "Logbook and calculator for casting metal in ceramic shell, offline on a phone.",
        start_url: ".",
        scope: ".",
        display: "standalone",
        orientation: "any",
        background_color: "#f6f1e7",
        theme_color: "#2c2a28",
        categories: ["productivity", "utilities"],
        icons: [
          { src: "icons/icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "icons/icon-512.png", sizes: "512x512", type: "image/png" },
          { src: "icons/maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
        // Paths of src/ui/base/state/paths.ts.
        shortcuts: [
          { name: "Dip", url: "dip", icons: [{ src: "icons/icon-192.png", sizes: "192x192" }] },
          { name: "Log the air", url: "rooms", icons: [{ src: "icons/icon-192.png", sizes: "192x192" }] },
          {
            name: "Check the slurry",
            url: "buckets",
            icons: [{ src: "icons/icon-192.png", sizes: "192x192" }],
          },
        ],
        // Made by scripts/pictures.mjs from the demo shop.
        screenshots: [
          shot("phone-rack", "390x844", "narrow", "The rack: what to do now"),
          shot("phone-piece", "390x844", "narrow", "A piece and its shell in section"),
          shot("desk-piece", "1280x800", "wide", "Rack and piece side by side"),
          shot("desk-board", "1280x800", "wide", "The board on the wall"),
        ],
        file_handlers: [
          {
            action: "patterns",
            accept: {
              "model/stl": [".stl"],
              "model/obj": [".obj"],
              "model/ply": [".ply"],
              "model/3mf": [".3mf"],
            },
          },
        ],
        // Path and field are those of src/device/sharedFile.ts, where the service worker takes the file.
        share_target: {
          action: "patterns/open",
          method: "POST",
          enctype: "multipart/form-data",
          params: {
            files: [
              {
                name: "mesh",
                accept: [
                  "model/*",
                  "application/octet-stream",
                  "application/sla",
                  ".stl",
                  ".obj",
                  ".ply",
                  ".3mf",
                ],
              },
            ],
          },
        },
      },
    }),
  ],
});
