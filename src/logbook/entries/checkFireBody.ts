import type { Check, Fault } from "./bodyFaults.ts";
import { fine, first, number, numbers, packedFault, text, unreasoned } from "./bodyFaults.ts";
import type { MeltBodies, PourBodies, PourTold, RunBasis, RunBodies, RunSegment } from "./fireBodies.ts";
import { ranges } from "./ranges.ts";

type Checks = { readonly [T in keyof (RunBodies & MeltBodies & PourBodies)]: Check<T> };

export const fireChecks: Checks = {
  "run-planned": ({ startC, segments, basis }) =>
    first(
      number("startC", startC, ranges.kilnC),
      segmentsFault(segments),
      basis === undefined ? null : basisFault(basis),
    ),
  "run-changed": ({ segments }) => segmentsFault(segments),
  "run-started": ({ kilnC }) => number("kilnC", kilnC, ranges.kilnC),
  "run-read": ({ kilnC }) => number("kilnC", kilnC, ranges.kilnC),
  "run-logged": ({ source, afterS, kilnC }) =>
    first(
      text("source", source),
      packedFault({ afterS, values: [{ field: "kilnC", list: kilnC, range: ranges.kilnC }] }),
    ),
  "run-step-done": ({ segment }) => number("segment", segment, { low: 0, high: ranges.segments.high - 1 }),
  "run-ended": ({ energyKWh, fuelKg }) => spentFault({ energyKWh, fuelKg }),
  "melt-planned": ({ alloyId, items, pourC, mayHold = [] }) =>
    first(
      text("alloyId", alloyId),
      number("pourC", pourC, ranges.metalC),
      ...items.map(({ name, massKg }) =>
        first(text("name", name), number("chargeKg", massKg, ranges.chargeKg)),
      ),
      ...mayHold.map(({ element, low, high }) =>
        first(text("element", element), numbers("mayHold", [low, high], ranges.share)),
      ),
    ),
  "melt-started": ({ weighedKg }) => number("chargeKg", weighedKg, ranges.weighedKg),
  "melt-read": ({ metalC }) => number("metalC", metalC, ranges.metalC),
  "melt-ended": ({ pouredKg, piggedKg, dropped, energyKWh, fuelKg }) =>
    first(
      number("pouredKg", pouredKg, dropped === true ? nothing : ranges.chargeKg),
      number("piggedKg", piggedKg, dropped === true ? nothing : ranges.chargeKg),
      spentFault({ energyKWh, fuelKg }),
    ),
  "pour-planned": ({ pourAt, sandC, shellC, metalC, steps, told }) =>
    first(
      number("pourAt", pourAt, ranges.pourAt),
      number("sandC", sandC, ranges.sandC),
      number("shellC", shellC, ranges.shellC),
      number("metalC", metalC, ranges.metalC),
      ...steps.map(({ id, minutes, keepsMin }) =>
        first(
          text("step", id),
          number("stepMin", minutes, ranges.stepMin),
          number("keepsMin", keepsMin, ranges.stepMin),
        ),
      ),
      told === undefined ? null : toldFault(told),
    ),
  "pour-step-marked": ({ step }) => text("step", step),
  "pour-item-checked": ({ item }) => text("item", item),
  "pour-decided": ({ name, go, passed, bound }) =>
    first(
      text("name", name),
      number("pourAt", bound?.pourAt, ranges.pourAt),
      number("shellC", bound?.shellC, ranges.shellC),
      number("metalC", bound?.metalC, ranges.metalC),
      go ? unreasoned(passed.map(({ item, reason }) => ({ name: item, reason }))) : null,
    ),
  "pour-ended": fine,
};

/** A plan that was put away gave no metal. */
const nothing = { low: 0, high: 0 };

function basisFault({ pattern, wallMm, shellKg, blindMm, kiln, preheatC, fireC }: RunBasis): Fault {
  return first(
    number("patternKg", pattern?.massKg, ranges.makingsKg),
    number("wallMm", wallMm, ranges.wallMm),
    number("shellKg", shellKg, ranges.makingsKg),
    number("blindMm", blindMm, ranges.blindMm),
    number("powerKW", kiln.powerKW, ranges.powerKW),
    number("maxC", kiln.maxC, ranges.kilnMaxC),
    number("volumeL", kiln.volumeL, ranges.kilnL),
    number("rateKPerH", kiln.maxRateKPerH, ranges.rateKPerH),
    number("shellC", preheatC, ranges.shellC),
    number("peakC", fireC, ranges.peakC),
  );
}

function toldFault({ people, carryMin, metalKg, thinnestMm }: PourTold): Fault {
  return first(
    number("people", people, ranges.people),
    number("carryMin", carryMin, ranges.carryMin),
    number("chargeKg", metalKg, ranges.chargeKg),
    ...thinnestMm.map((mm) => number("thinnestMm", mm, ranges.thickMm)),
  );
}

function spentFault({
  energyKWh,
  fuelKg,
}: {
  readonly energyKWh: number | undefined;
  readonly fuelKg: number | undefined;
}): Fault {
  return first(number("energyKWh", energyKWh, ranges.energyKWh), number("fuelKg", fuelKg, ranges.fuelKg));
}

function segmentsFault(segments: readonly RunSegment[]): Fault {
  return first(number("segments", segments.length, ranges.segments), ...segments.map(segmentFault));
}

function segmentFault(segment: RunSegment): Fault {
  switch (segment.kind) {
    case "ramp":
      return first(
        number("toC", segment.toC, ranges.kilnC),
        number("rateKPerH", segment.rateKPerH, ranges.rateKPerH),
      );
    case "hold":
      return first(
        number("atC", segment.atC, ranges.kilnC),
        number("minutes", segment.minutes, ranges.segmentMin),
      );
    case "instruction":
      return first(text("code", segment.code), number("minutes", segment.minutes, ranges.segmentMin));
  }
}
