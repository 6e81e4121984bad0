import { expect, test } from "@playwright/test";
import { wallCooling } from "../../src/physics/heat/heat.ts";
import { evenCellsMm, march } from "../../src/physics/heat/heatMarch.ts";
import { startConduction } from "../../src/physics/heat/heatSolver.ts";
import { figuresOf, show } from "./measure.ts";

const shell = { conductivityWMK: 0.7, densityKgM3: 1800, heatJKgK: 1000, emissivity: 0.85 } as const;
const cells = 24;
const frameMs = 1000 / 60;
/** A slow phone against this machine (judgement). */
const phoneTimes = 6;

test("a 30-minute cooling beside a frame, and its cells beside a bare loop", () => {
  const once = (): number => {
    const start = performance.now();
    wallCooling({ ...shell, wallMm: 10, startC: 540, airC: 20, minutes: 30, outside: "air", cells });
    return performance.now() - start;
  };
  for (let i = 0; i < 50; i++) once();
  const cooling = figuresOf(Array.from({ length: 200 }, once));
  console.log(`\n${show("30 min of cooling with its band, 3 × 24 cells", cooling)}`);

  const perS = Math.max(...Array.from({ length: 7 }, solverCellsPerS));
  const barePerS = Math.max(...Array.from({ length: 7 }, bareCellsPerS));
  console.log(
    `solver ${(perS / 1e6).toFixed(1)} M cell steps/s, bare tridiagonal loop ${(barePerS / 1e6).toFixed(1)} M/s: ${(barePerS / perS).toFixed(1)} times\n`,
  );
  expect(cooling.median * phoneTimes).toBeLessThan(frameMs);
  expect(barePerS / perS).toBeLessThan(12);
});

function solverCellsPerS(): number {
  const conduction = startConduction({
    layers: [{ ...shell, cellsMm: evenCellsMm({ thicknessMm: 10, cells }), startC: 540 }],
    outer: { kind: "open", airC: 20, filmWM2K: 8, emissivity: shell.emissivity },
  });
  const steps = 20_000;
  const start = performance.now();
  march({
    conduction,
    marksS: [steps * 0.05],
    firstS: 0.05,
    growth: 1,
    longestS: 0.05,
    onMark: () => "go-on",
  });
  return (steps * cells * 1000) / (performance.now() - start);
}

/** The least any implicit step can cost: one tridiagonal solve a step, constant coefficients, nothing else. */
function bareCellsPerS(): number {
  const at = new Float64Array(cells).fill(540);
  const known = new Float64Array(cells);
  const lean = new Float64Array(cells);
  const steps = 20_000;
  const start = performance.now();
  for (let step = 0; step < steps; step++) {
    let beyond = 20;
    let beyondLean = 0;
    for (let i = cells - 1; i >= 0; i--) {
      const pivot = 3 - beyondLean;
      beyond = (at[i]! + beyond) / pivot;
      beyondLean = 1 / pivot;
      known[i] = beyond;
      lean[i] = beyondLean;
    }
    let within = at[0]!;
    for (let i = 0; i < cells; i++) {
      within = known[i]! + lean[i]! * within;
      at[i] = within;
    }
  }
  return (steps * cells * 1000) / (performance.now() - start);
}
