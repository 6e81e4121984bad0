import { chromium, expect, test, type Browser } from "@playwright/test";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { chromiumArgs, chromiumPath } from "../chromium.ts";
import { serveBuilt } from "../journeys/site.ts";
import { objFile, plyBinaryFile, stlBinaryFile } from "../meshFiles.ts";
import { figuresOf } from "./measure.ts";
import { bumpyBall } from "./meshFigure.ts";

/** 4.8 million too with BENCH_LARGE=1; three fresh browsers for each figure. */
const sizes = [50_000, 300_000, 1_200_000, ...(process.env["BENCH_LARGE"] === "1" ? [4_800_000] : [])];
const stages = [
  ["floor", "pass over the bytes"],
  ["read", "our reader, welded"],
  ["open", "opened: hash, weld, measure, copy"],
  ["three", "three's loader, neither"],
] as const;
const runs = 3;

declare const window: { readonly run: (stage: string, name: string) => Promise<number> };

test("mesh files opened in Chromium beside a pass over their bytes and three's loaders", async () => {
  test.setTimeout(1_800_000);
  const dist = mkdtempSync(join(tmpdir(), "dipbook-pattern-"));
  await build({
    configFile: false,
    root: "tests/bench/pattern",
    logLevel: "error",
    build: { outDir: dist, emptyOutDir: true, target: "es2022" },
  });
  const site = await serveBuilt(dist);
  if (!existsSync("/proc/self/status")) console.log("peak memory: no /proc here, so not measured");
  for (const size of sizes) {
    const ball = bumpyBall(size);
    console.log(`\n${ball.idx.length / 3} triangles`);
    const files = [
      ["ball.stl", stlBinaryFile(ball)],
      ["ball.ply", plyBinaryFile(ball, "little")],
      ...(size <= 300_000 ? ([["ball.obj", objFile(ball)]] as const) : []),
    ] as const;
    for (const [name, bytes] of files) {
      writeFileSync(join(dist, name), bytes);
      const megabytes = statSync(join(dist, name)).size / 1e6;
      for (const [stage, what] of stages) {
        const done = [];
        for (let n = 0; n < runs; n++) done.push(await inFreshBrowser(site.url, stage, name));
        const { min, median, max } = figuresOf(done.map(({ ms }) => ms));
        const peak = figuresOf(done.map(({ peakMb }) => peakMb)).median;
        console.log(
          `${`${name} ${megabytes.toFixed(1)} MB`.padEnd(20)} ${what.padEnd(34)} min ${min.toFixed(0).padStart(6)}  median ${median.toFixed(0).padStart(6)}  max ${max.toFixed(0).padStart(6)} ms` +
            `  ${((megabytes / median) * 1000).toFixed(0).padStart(6)} MB/s  peak +${peak.toFixed(0)} MB`,
        );
        expect(median).toBeGreaterThan(0);
      }
    }
  }
  await site.close();
  rmSync(dist, { recursive: true, force: true });
});

async function inFreshBrowser(url: string, stage: string, name: string) {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: [...chromiumArgs] });
  const page = await browser.newPage();
  await page.goto(url);
  await expect(page).toHaveTitle("ready");
  const before = await marksMb(browser);
  const ms = await page.evaluate(([s, n]) => window.run(s, n), [stage, name] as const);
  const after = await marksMb(browser);
  await browser.close();
  const grown = [...after].map(([pid, mb]) => mb - (before.get(pid) ?? 0));
  return { ms, peakMb: Math.max(0, ...grown) };
}

/** The system's high marks of the browser's renderers; the page's own way of asking wants isolation it does not have. */
async function marksMb(browser: Browser): Promise<ReadonlyMap<number, number>> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  const marks = processInfo
    .filter(({ type, id }) => type === "renderer" && existsSync(`/proc/${id}/status`))
    .map(({ id }): [number, number] => {
      const mark = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, "utf8"));
      return [id, Number(mark?.[1] ?? 0) / 1024];
    });
  return new Map(marks);
}
