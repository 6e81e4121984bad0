import type { FiringLimits, RateLimit } from "./firingLimits.ts";
import type { Reason, Segment } from "./firingSegments.ts";
import { kilnFallKPerH, kilnRateKPerH } from "./kilnPower.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

type Ramp = Extract<Segment, { kind: "ramp" }>;

/** Whether a limit speaks on the way from one temperature to another. */
export function speaksOn({ way, fromC, toC }: RateLimit, path: { fromC: number; toC: number }): boolean {
  for (const [name, atC] of Object.entries({
    fromC,
    toC,
    "path's fromC": path.fromC,
    "path's toC": path.toC,
  }))
    requireWithin(name, atC, { low: -273, high: 4000, unit: "°C" });
  const isHeating = path.toC > path.fromC;
  if (way !== "both" && (way === "heating") !== isHeating) return false;
  return Math.min(toC, Math.max(path.fromC, path.toC)) > Math.max(fromC, Math.min(path.fromC, path.toC));
}

/**
 * Ramps from one temperature to another, as steep as the limits, the kiln and practice allow, split where a
 * limit begins or ends. The first reason of each is the one that binds. An empty kiln knows only its power.
 */
export function rampsBetween({
  fromC,
  toC,
  limits,
  practiceKPerH,
  isEmpty = false,
}: {
  fromC: number;
  toC: number;
  limits: FiringLimits;
  /** What practice takes, by the top of a stretch; null for no habit. */
  practiceKPerH: (topC: number) => number | null;
  isEmpty?: boolean | undefined;
}): readonly Ramp[] {
  requireWithin("fromC", fromC, { low: -40, high: 1700, unit: "°C" });
  requireWithin("toC", toC, { low: -40, high: 1700, unit: "°C" });
  for (const { rateKPerH } of limits.rates)
    requirePositive("rateKPerH", rateKPerH, { high: 1e15, unit: "K/h" });
  const low = Math.min(fromC, toC);
  const high = Math.max(fromC, toC);
  const rates = isEmpty ? [] : limits.rates.filter((limit) => speaksOn(limit, { fromC, toC }));
  const inner = rates.flatMap((limit) => [limit.fromC, limit.toC]).filter((c) => c > low && c < high);
  const rising = [...new Set([low, ...inner, high])].sort((a, b) => a - b);
  const stops = toC > fromC ? rising : rising.toReversed();
  const ramps: Ramp[] = [];
  for (const [i, stopC] of stops.entries()) {
    const startC = stops[i - 1];
    if (startC === undefined || startC === stopC) continue;
    const path = { fromC: startC, toC: stopC };
    const reasons = [
      ...rates.filter((limit) => speaksOn(limit, path)).map(reasonOf),
      kilnReason(limits, { ...path, isEmpty }),
      ...practiceReason(practiceKPerH(Math.max(startC, stopC))),
    ].sort((a, b) => (a.figures["rateKPerH"] ?? 0) - (b.figures["rateKPerH"] ?? 0));
    const rateKPerH = roundDown(reasons[0]?.figures["rateKPerH"] ?? 0);
    const before = ramps.at(-1);
    if (before?.rateKPerH === rateKPerH && before.reasons[0]?.code === reasons[0]?.code)
      ramps[ramps.length - 1] = { ...before, toC: stopC, reasons: joined(before.reasons, reasons) };
    else ramps.push({ kind: "ramp", toC: stopC, rateKPerH, reasons });
  }
  return ramps;
}

const reasonOf = ({ code, fromC, toC, rateKPerH }: RateLimit): Reason => ({
  code,
  figures: { rateKPerH, fromC, toC },
});

function kilnReason(
  { kiln, loadKg }: FiringLimits,
  { fromC, toC, isEmpty }: { fromC: number; toC: number; isEmpty: boolean },
): Reason {
  const load = isEmpty ? 0 : loadKg;
  if (toC > fromC) {
    const rateKPerH = kilnRateKPerH({ kiln, loadKg: load, atC: toC });
    return { code: "kiln-power-limit", figures: { rateKPerH, powerKW: kiln.powerKW, atC: toC } };
  }
  return { code: "kiln-loss", figures: { rateKPerH: kilnFallKPerH({ kiln, loadKg: load, fromC, toC }) } };
}

const practiceReason = (rateKPerH: number | null): readonly Reason[] =>
  rateKPerH === null ? [] : [{ code: "practice", figures: { rateKPerH } }];

/** One reason a code, the stricter where both stretches have it. */
function joined(before: readonly Reason[], after: readonly Reason[]): readonly Reason[] {
  const stricter = (a: Reason, b: Reason): number =>
    (a.figures["rateKPerH"] ?? 0) - (b.figures["rateKPerH"] ?? 0);
  const all = [...before, ...after].sort(stricter);
  return all.filter((reason, i) => all.findIndex(({ code }) => code === reason.code) === i);
}

/** A controller takes whole numbers, and a limit is not rounded up. */
function roundDown(rateKPerH: number): number {
  if (rateKPerH >= 20) return Math.floor(rateKPerH / 5) * 5;
  return rateKPerH >= 2 ? Math.floor(rateKPerH) : rateKPerH;
}
