import { expect, test } from "@playwright/test";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { objFile, plyBinaryFile, stlBinaryFile, stlTextFile, threeMfFile } from "../meshFiles.ts";
import { figuresOf } from "./measure.ts";
import { bumpyBall } from "./meshFigure.ts";

/** 4.8 million too with BENCH_LARGE=1; three fresh processes for each figure. */
const sizes = [50_000, 300_000, 1_200_000, ...(process.env["BENCH_LARGE"] === "1" ? [4_800_000] : [])];
/** Text writers build one long string, which has a limit of its own. */
const mostInText = 1_200_000;
const runs = 3;

type Stage = { readonly times: Readonly<Record<string, number>>; readonly peakMb: number };

test("meshes read and measured beside a pass over their bytes", async () => {
  test.setTimeout(900_000);
  const folder = mkdtempSync(join(tmpdir(), "dipbook-mesh-"));
  await build({
    configFile: false,
    logLevel: "error",
    build: {
      ssr: "tests/bench/meshStage.ts",
      outDir: folder,
      emptyOutDir: false,
      rolldownOptions: { output: { entryFileNames: "stage.mjs" } },
    },
  });
  const row = (stage: string, file: string, label: string): number => {
    const done = Array.from({ length: runs }, (): Stage => {
      const { stdout, stderr } = spawnSync(process.execPath, [join(folder, "stage.mjs"), stage, file], {
        encoding: "utf8",
      });
      expect(stderr).toBe("");
      return JSON.parse(stdout) as Stage;
    });
    const size = statSync(file).size / 1e6;
    const peak = figuresOf(done.map(({ peakMb }) => peakMb)).median;
    let last = NaN;
    for (const name of Object.keys(done[0]?.times ?? {})) {
      const { min, median, max } = figuresOf(done.map(({ times }) => times[name] ?? NaN));
      last = median;
      console.log(
        `${label.padEnd(24)} ${name.padEnd(36)} min ${min.toFixed(0).padStart(6)}  median ${median.toFixed(0).padStart(6)}  max ${max.toFixed(0).padStart(6)} ms` +
          `  ${((size / median) * 1000).toFixed(0).padStart(6)} MB/s  peak +${peak.toFixed(0)} MB`,
      );
    }
    return last;
  };
  for (const size of sizes) {
    const ball = bumpyBall(size);
    const files = [
      ["stl", stlBinaryFile],
      ["ply", (mesh: typeof ball) => plyBinaryFile(mesh, "little")],
      ...(size <= mostInText
        ? ([
            ["text.stl", stlTextFile],
            ["obj", objFile],
            ["3mf", threeMfFile],
          ] as const)
        : []),
    ] as const;
    console.log(`\n${ball.idx.length / 3} triangles`);
    for (const [ending, write] of files) {
      const file = join(folder, `ball.${ending}`);
      writeFileSync(file, write(ball));
      const label = `.${ending} ${(statSync(file).size / 1e6).toFixed(1)} MB`;
      const floor = row("floor", file, label);
      const read = row("read", file, label);
      row("slices", file, label);
      console.log(`${"".padEnd(24)} read over floor ${(read / floor).toFixed(1)}`);
      if (ending === "stl") row("measure", file, label);
    }
  }
  rmSync(folder, { recursive: true, force: true });
});
