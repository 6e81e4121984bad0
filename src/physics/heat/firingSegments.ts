import { requireWhole, requireWithin } from "../stats/range.ts";

/** Why a slope is no steeper, a hold no shorter or a step asked for. */
export type ReasonCode =
  | "thermal-stress"
  | "steam"
  | "quartz"
  | "cristobalite"
  | "drain-window"
  | "wax-flash-point"
  | "decomposition"
  | "heat-release"
  | "carbon-burn-off"
  | "sintering"
  | "kiln-power-limit"
  | "kiln-loss"
  | "soak"
  | "practice";

/** A reason and the numbers behind it, each named with its unit. */
export type Reason = { readonly code: ReasonCode; readonly figures: Readonly<Record<string, number>> };

/** Something to do at the kiln. */
export type InstructionCode =
  | "extraction-on"
  | "openings-checked"
  | "cup-down"
  | "pan-outside"
  | "tray-in"
  | "tray-out"
  | "load-hot"
  | "vents-open"
  | "drain-watched"
  | "carbon-checked"
  | "inspect-cold"
  | "keep-hot";

/** A piece of a firing. A ramp's direction is that of its goal; its rate is always above 0. */
export type Segment =
  | {
      readonly kind: "ramp";
      readonly toC: number;
      readonly rateKPerH: number;
      readonly reasons: readonly Reason[];
    }
  | {
      readonly kind: "hold";
      readonly atC: number;
      readonly minutes: number;
      readonly reasons: readonly Reason[];
    }
  | {
      readonly kind: "instruction";
      readonly code: InstructionCode;
      readonly minutes?: number | undefined;
      readonly reasons: readonly Reason[];
    };

/** What one segment takes the kiln through, by the plan. */
export type Stretch = {
  readonly segment: number;
  readonly startMin: number;
  readonly endMin: number;
  readonly fromC: number;
  readonly toC: number;
};

/**
 * The planned curve, one stretch a segment. A hold stands at the temperature the kiln has come to; an
 * instruction lasts its minutes. Throws a RangeError on a ramp without a rate or a time below 0.
 */
export function scheduleCurve(segments: readonly Segment[], startC: number): readonly Stretch[] {
  requireWithin("startC", startC, { low: -40, high: 1700, unit: "°C" });
  const curve: Stretch[] = [];
  let atC = startC;
  let atMin = 0;
  for (const [segment, part] of segments.entries()) {
    const minutes = minutesOf(part, atC);
    const toC = part.kind === "ramp" ? part.toC : atC;
    curve.push({ segment, startMin: atMin, endMin: atMin + minutes, fromC: atC, toC });
    atMin += minutes;
    atC = toC;
  }
  return curve;
}

/** Temperature the plan has at a minute, °C; its ends beyond them, the start for an empty plan. */
export function plannedC(
  curve: readonly Stretch[],
  { minute, startC }: { minute: number; startC: number },
): number {
  requireWithin("minute", minute, { low: -1e9, high: 1e9, unit: "min" });
  requireWithin("startC", startC, { low: -273, high: 4000, unit: "°C" });
  requireCurve(curve);
  let atC = startC;
  for (const { startMin, endMin, fromC, toC } of curve) {
    if (minute < startMin) return atC;
    if (minute < endMin) return fromC + ((toC - fromC) * (minute - startMin)) / (endMin - startMin);
    atC = toC;
  }
  return atC;
}

function minutesOf(segment: Segment, fromC: number): number {
  if (segment.kind === "ramp") {
    requireWithin("toC", segment.toC, { low: -40, high: 1700, unit: "°C" });
    requireWithin("rateKPerH", segment.rateKPerH, { low: 1e-3, high: 100_000, unit: "K/h" });
    return (Math.abs(segment.toC - fromC) / segment.rateKPerH) * 60;
  }
  const minutes = segment.minutes ?? 0;
  requireWithin("minutes", minutes, { low: 0, high: 100_000, unit: "min" });
  return minutes;
}

/** Refuses a curve that does not go on in time, or leaves the temperatures of a kiln. */
export function requireCurve(curve: readonly Stretch[]): void {
  let atMin = 0;
  for (const { segment, startMin, endMin, fromC, toC } of curve) {
    requireWhole("segment", segment, { low: 0, high: 1e6 });
    requireWithin("startMin", startMin, { low: atMin, high: 1e9, unit: "min, rising" });
    requireWithin("endMin", endMin, { low: startMin, high: 1e9, unit: "min, rising" });
    requireWithin("fromC", fromC, { low: -273, high: 4000, unit: "°C" });
    requireWithin("toC", toC, { low: -273, high: 4000, unit: "°C" });
    atMin = endMin;
  }
}

/** Seconds the plan spends between two temperatures on its first way up, holds in between included. */
export function secondsUp(curve: readonly Stretch[], { fromC, toC }: { fromC: number; toC: number }): number {
  requireWithin("fromC", fromC, { low: -273, high: 4000, unit: "°C" });
  requireWithin("toC", toC, { low: -273, high: 4000, unit: "°C" });
  requireCurve(curve);
  let seconds = 0;
  for (const stretch of curve) {
    const length = (stretch.endMin - stretch.startMin) * 60;
    const rise = stretch.toC - stretch.fromC;
    if (rise > 0) {
      const within = Math.min(toC, stretch.toC) - Math.max(fromC, stretch.fromC);
      seconds += (length * Math.max(0, within)) / rise;
    } else if (rise === 0 && stretch.toC >= fromC && stretch.toC < toC) seconds += length;
    if (stretch.toC >= toC) break;
  }
  return seconds;
}
