import { radiationWM2K4, zeroCK } from "../heat/heatSolver.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** A shell that waits for metal from the crucible. */
export type WaitingShell = {
  readonly id: string;
  readonly metalKg: number;
  readonly thinnestMm: number;
  /** From the last shell's end to its own fill's end: carrying, placing, pouring. */
  readonly pourMin: number;
  /** Coldest metal that still fills it. */
  readonly leastMetalC: number;
  /** Minutes out of the kiln until it is too cold; null for no limit known. */
  readonly latestMin: number | null;
};

export type ShellTurn = {
  readonly id: string;
  readonly startMin: number;
  readonly endMin: number;
  /** Metal's temperature at the end of this fill. */
  readonly metalC: number;
  readonly metalLeftKg: number;
  /** Minutes to spare against the first of its limits; below 0 it is late. Null where it has none. */
  readonly spareMin: number | null;
  readonly problems: readonly ("metal-short" | "metal-cold" | "shell-cold")[];
};

export type PourOrder = {
  readonly turns: readonly ShellTurn[];
  readonly isEnough: boolean;
  readonly metalLeftKg: number;
};

/** Less than this, kg, is the rounding of a sum and no lack of metal. */
const roundedKg = 1e-9;

/** Whether there is less metal than is asked for, both kg. Derived. Throws a RangeError on what is no mass. */
export function fallsShort(haveKg: number, wantedKg: number): boolean {
  requireWithin("haveKg", haveKg, { low: -roundedKg, high: 1e15, unit: "kg" });
  requireWithin("wantedKg", wantedKg, { low: 0, high: 1e15, unit: "kg" });
  return wantedKg > haveKg + roundedKg;
}

/**
 * Order of several shells from one crucible, and whether metal and heat last.
 *
 * The one whose time runs out first goes first, which keeps the worst lateness least (Jackson's rule, 1955);
 * of equals the thinnest. The metal cools evenly at `meltCoolKPerMin`. Shells come from the kiln each at its
 * turn, unless all are taken out together. A shell there is not metal enough for is left unpoured.
 */
export function pourOrder({
  shells,
  metalKg,
  metalC,
  meltCoolKPerMin,
  outTogether,
}: {
  shells: readonly WaitingShell[];
  metalKg: number;
  metalC: number;
  meltCoolKPerMin: number;
  outTogether: boolean;
}): PourOrder {
  requireWithin("metalKg", metalKg, { low: 0, high: 10_000, unit: "kg" });
  requireWithin("metalC", metalC, { low: 100, high: 2500, unit: "°C" });
  requirePositive("meltCoolKPerMin", meltCoolKPerMin, { high: 1e5, unit: "K/min" });
  for (const shell of shells) {
    requireWithin("shell's metalKg", shell.metalKg, { low: 0, high: 10_000, unit: "kg" });
    requireWithin("thinnestMm", shell.thinnestMm, { low: 0, high: 5000, unit: "mm" });
    requireWithin("pourMin", shell.pourMin, { low: 0, high: 10_000, unit: "min" });
    requireWithin("leastMetalC", shell.leastMetalC, { low: -273, high: 4000, unit: "°C" });
    requireWithin("latestMin", shell.latestMin ?? 0, { low: 0, high: 1e6, unit: "min" });
  }
  const metalLimit = ({ leastMetalC }: WaitingShell): number => (metalC - leastMetalC) / meltCoolKPerMin;
  const limit = (shell: WaitingShell): number =>
    Math.min(metalLimit(shell), outTogether ? (shell.latestMin ?? Infinity) : Infinity);
  const order = shells.toSorted(
    (a, b) => limit(a) - limit(b) || a.thinnestMm - b.thinnestMm || (a.id < b.id ? -1 : 1),
  );
  const turns: ShellTurn[] = [];
  let startMin = 0;
  let leftKg = metalKg;
  for (const shell of order) {
    const isShort = fallsShort(leftKg, shell.metalKg);
    const endMin = startMin + (isShort ? 0 : shell.pourMin);
    const outMin = outTogether ? endMin : endMin - startMin;
    const spare = Math.min(metalLimit(shell) - endMin, (shell.latestMin ?? Infinity) - outMin);
    const atC = metalC - meltCoolKPerMin * endMin;
    if (!isShort) leftKg -= shell.metalKg;
    turns.push({
      id: shell.id,
      startMin,
      endMin,
      metalC: atC,
      metalLeftKg: leftKg,
      spareMin: spare === Infinity ? null : spare,
      problems: [
        ...(isShort ? (["metal-short"] as const) : []),
        ...(atC < shell.leastMetalC - 1e-9 ? (["metal-cold"] as const) : []),
        ...(outMin > (shell.latestMin ?? Infinity) + 1e-9 ? (["shell-cold"] as const) : []),
      ],
    });
    startMin = endMin;
  }
  return { turns, isEnough: turns.every(({ problems }) => problems.length === 0), metalLeftKg: leftKg };
}

/**
 * How fast metal cools in a crucible out of the furnace, K/min: its open surface radiates, the rest is taken
 * as insulated by the hot crucible unless `bareM2` counts it in. Derived; a crucible seen to cool is better.
 */
export function meltCoolKPerMin({
  metalKg,
  heatJKgK,
  metalC,
  airC,
  bareM2,
  emissivity,
}: {
  metalKg: number;
  heatJKgK: number;
  metalC: number;
  airC: number;
  bareM2: number;
  emissivity: number;
}): number {
  requirePositive("metalKg", metalKg, { high: 10_000, unit: "kg" });
  requirePositive("heatJKgK", heatJKgK, { high: 5000, unit: "J/(kg·K)" });
  requirePositive("bareM2", bareM2, { high: 10, unit: "m² (not cm²)" });
  requireWithin("emissivity", emissivity, { low: 0, high: 1, unit: "" });
  requireWithin("metalC", metalC, { low: -273, high: 4000, unit: "°C" });
  requireWithin("airC", airC, { low: -273, high: 4000, unit: "°C" });
  const filmWM2K = 10;
  const lossWM2 =
    emissivity * radiationWM2K4 * ((metalC + zeroCK) ** 4 - (airC + zeroCK) ** 4) +
    filmWM2K * (metalC - airC);
  return (60 * lossWM2 * bareM2) / (metalKg * heatJKgK);
}
