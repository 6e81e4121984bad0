import type { InstructionCode, Segment } from "../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../physics/heat/firingSegments.ts";

/** A step changed by hand has no reason but the hand. */
export const changedAt = (segments: readonly Segment[], place: number, part: Segment): readonly Segment[] =>
  segments.map((one, i) => (i === place ? { ...part, reasons: [] } : one));

export const without = (segments: readonly Segment[], place: number): readonly Segment[] =>
  segments.filter((_, i) => i !== place);

/** One place up or down; where there is none it stays. */
export function movedBy(
  segments: readonly Segment[],
  { place, by }: { readonly place: number; readonly by: 1 | -1 },
): readonly Segment[] {
  const [part, other] = [segments[place], segments[place + by]];
  if (part === undefined || other === undefined) return segments;
  return segments.map((one, i) => (i === place ? other : i === place + by ? part : one));
}

/** A new step behind a place, at the temperature the plan has come to there. */
export function insertedAfter(
  segments: readonly Segment[],
  {
    place,
    kind,
    code,
    startC,
  }: {
    readonly place: number;
    readonly kind: Segment["kind"];
    readonly code: InstructionCode;
    readonly startC: number;
  },
): readonly Segment[] {
  const atC = Math.round(scheduleCurve(segments, startC)[place]?.toC ?? startC);
  const made: Segment =
    kind === "ramp"
      ? { kind, toC: Math.min(1400, atC + 50), rateKPerH: 100, reasons: [] }
      : kind === "hold"
        ? { kind, atC, minutes: 30, reasons: [] }
        : { kind, code, reasons: [] };
  return [...segments.slice(0, place + 1), made, ...segments.slice(place + 1)];
}
