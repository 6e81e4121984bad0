import type { Check, Fault } from "./bodyFaults.ts";
import { first, number, numbers, text } from "./bodyFaults.ts";
import type { BucketBodies, BucketTargets, Makings } from "./bucketBodies.ts";
import { ranges } from "./ranges.ts";

export const bucketChecks: { readonly [T in keyof BucketBodies]: Check<T> } = {
  "bucket-set": ({ name, ...targets }) => first(text("name", name), targetsFault(targets)),
  "bucket-read": (read) =>
    first(
      number("cupS", read.cupS, ranges.cupS),
      read.dipsS ? number("dips", read.dipsS.length, ranges.dips) : null,
      numbers("dipsS", read.dipsS, ranges.cupS),
      number("slurryC", read.slurryC, ranges.slurryC),
      number("densityGCm3", read.densityGCm3, ranges.densityGCm3),
      number("weighedG", read.weighedG, ranges.massG),
      number("weighedMl", read.weighedMl, ranges.weighedMl),
      number("pH", read.pH, ranges.pH),
      number("liquorGCm3", read.liquorGCm3, ranges.densityGCm3),
      number("ovenSolids", read.ovenSolids, ranges.share),
      number("plateG", read.plateG, ranges.plateG),
      number("plateCm2", read.plateCm2, ranges.plateCm2),
      number("gelledAfterH", read.gelledAfterH, ranges.gelH),
      number("liquidForH", read.liquidForH, ranges.gelH),
      number("bacteriaPerMl", read.bacteriaPerMl, ranges.bacteriaPerMl),
    ),
  "bucket-mixed": (mix) =>
    first(makingsFault(mix), number("litre", mix.litre, ranges.bucketL), silica(mix.solSilica)),
  "bucket-topped": (top) =>
    first(
      makingsFault(top),
      silica(top.solSilica),
      number("densityGCm3", top.expected?.densityGCm3, ranges.densityGCm3),
      number("cupS", top.expected?.cupS, ranges.cupS),
    ),
  "bucket-lost": ({ litre }) => number("litre", litre, ranges.bucketL),
  "bucket-counted": ({ litre }) => number("litre", litre, ranges.bucketL),
  "bucket-passed": () => null,
};

const silica = (share: number | undefined): Fault => number("solSilica", share, ranges.silica);

/** Nothing at all was put in: that is no mix and no top-up. */
function makingsFault({ flourKg, solKg, waterKg }: Makings): Fault {
  return first(
    number("flourKg", flourKg, ranges.makingsKg),
    number("solKg", solKg, ranges.makingsKg),
    number("waterKg", waterKg, ranges.makingsKg),
    flourKg + solKg + waterKg > 0 ? null : { code: "missing", field: "makings" },
  );
}

function targetsFault(targets: BucketTargets): Fault {
  const { lowS, highS } = targets;
  return first(
    number("flourGCm3", targets.flourGCm3, ranges.flourGCm3),
    number("solGCm3", targets.solGCm3, ranges.densityGCm3),
    silica(targets.solSilica),
    number("ratio", targets.ratio, ranges.ratio),
    number("fullL", targets.fullL, ranges.bucketL),
    number("leastL", targets.leastL, { low: 0, high: targets.fullL ?? ranges.bucketL.high }),
    number("openM2", targets.openM2, ranges.openM2),
    number("densityGCm3", targets.densityGCm3, ranges.densityGCm3),
    number("lowS", lowS, ranges.cupS),
    number("highS", highS, { low: lowS ?? ranges.cupS.low, high: ranges.cupS.high }),
    number("slurryC", targets.slurryC, ranges.slurryC),
    number("leastDryH", targets.leastDryH, ranges.leastDryH),
  );
}
