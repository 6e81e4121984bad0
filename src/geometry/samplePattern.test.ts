import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";

const kept = readFileSync("public/sample-pattern.stl");

test("the sample pattern is one watertight body of 120 mm without handles", () => {
  const measured = measureMesh(readMesh(kept, "sample-pattern.stl"));
  expect(measured).toMatchObject({
    watertight: true,
    components: 1,
    genus: 0,
    degenerate: 0,
    overlaps: false,
  });
  expect(measured.box.high[2] - measured.box.low[2]).toBeCloseTo(120, 4);
  expect(measured.volume).toBeGreaterThan(190_000);
  expect(measured.volume).toBeLessThan(215_000);
  expect(measured.triangles).toBeLessThan(60_000);
});

test("its script makes the same bytes again", () => {
  const folder = mkdtempSync(join(tmpdir(), "dipbook-sample-"));
  const file = join(folder, "again.stl");
  const { status, stderr } = spawnSync(process.execPath, ["scripts/samplePattern.mjs", file], {
    encoding: "utf8",
  });
  expect(stderr).toBe("");
  expect(status).toBe(0);
  expect(readFileSync(file).equals(kept)).toBe(true);
  rmSync(folder, { recursive: true, force: true });
});
