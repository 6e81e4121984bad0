import { readFileSync, readdirSync } from "node:fs";
import { basename } from "node:path";
import { expect, test } from "vitest";

const inTest = readFileSync("src/ui/shell/charts.browser.test.tsx", "utf8");

test("every chart is judged by the test over all charts", () => {
  const charts = readdirSync("src/ui", { recursive: true, encoding: "utf8" }).filter(
    (file) =>
      file.endsWith(".tsx") &&
      basename(file) !== "Plot.tsx" &&
      readFileSync(`src/ui/${file}`, "utf8").includes("<PlotFigure"),
  );
  expect(charts.length).toBeGreaterThan(10);
  expect(charts.map((file) => basename(file, ".tsx")).filter((name) => !inTest.includes(name))).toEqual([]);
});
