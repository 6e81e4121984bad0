import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Segment } from "../../physics/heat/firingSegments.ts";
import type { KilnReading } from "../../physics/heat/runPosition.ts";

/** The readings as ramps and holds from the start on, so that the energy of what was done can be reckoned. */
export function readSegments(
  readings: readonly KilnReading[],
  { startedAt, startC }: { readonly startedAt: number; readonly startC: number },
): readonly Segment[] {
  let before: KilnReading = { at: startedAt, kilnC: startC };
  return readings.flatMap((reading): readonly Segment[] => {
    const minutes = (reading.at - before.at) / minuteMs;
    if (minutes <= 0) return [];
    const rise = reading.kilnC - before.kilnC;
    const rateKPerH = (Math.abs(rise) / minutes) * 60;
    const isRamp = rateKPerH >= 1 && rateKPerH <= 1e5;
    // A drift below a ramp's slowest adds up until it is one.
    before = { at: reading.at, kilnC: isRamp ? reading.kilnC : before.kilnC };
    return isRamp
      ? [{ kind: "ramp", toC: reading.kilnC, rateKPerH, reasons: [] }]
      : [{ kind: "hold", atC: before.kilnC, minutes, reasons: [] }];
  });
}
