import type { CoatCase, CoatSoFar } from "./coatDrying.ts";
import { coatUpTo, dryCoat, groundsOf } from "./coatDrying.ts";
import { airGrounds } from "../air/airGrounds.ts";
import { airAt } from "../air/hanging.ts";
import { keep, recall, remembered } from "../log/memo.ts";

type Dried = ReturnType<typeof dryCoat>;
type Remembered = CoatCase & { readonly memory: NonNullable<CoatCase["memory"]> };

/**
 * As `dryCoat`, from what is kept of the same coat. A covered one is worked out once as long as nothing it rests on
 * changes; the outer one goes on from the last reading before it was last judged.
 */
export function dryCoatFrom(of: Remembered): Dried {
  if (!of.isOuter) {
    const { memo, id } = of.memory;
    const grounds = groundsUpTo(of, { until: of.judgedAt, isWhole: true });
    return remembered<Dried>({ memo, kind: "covered", id }, grounds, () => dryCoat(of));
  }
  return dryOpen(of);
}

function dryOpen(of: Remembered): Dried {
  const { memo, id } = of.memory;
  const place = { memo, kind: "open", id };
  const grounds = groundsOf(of);
  const { spread } = grounds;
  const upTo = (until: number): readonly unknown[] => [
    spread.early,
    spread.late,
    ...groundsUpTo(of, { until, isWhole: false }),
  ];
  let soFar = recall<CoatSoFar>(place, ({ at }) => (at <= of.judgedAt ? upTo(at) : []));
  const readAt = airAt(of.stays, of.judgedAt)?.reading.at ?? null;
  const from = soFar?.at ?? of.coat.dippedAt;
  if (readAt !== null && readAt > from && readAt <= of.judgedAt) {
    soFar = coatUpTo(readAt, of, { spread, soFar });
    keep(place, { grounds: upTo(readAt), value: soFar });
  }
  return dryCoat(of, grounds, soFar);
}

/**
 * All that a coat up to a time rests on: the stamps of its log, the figures that other coats and the bucket give it, and
 * the air. `isWhole`: the air about the end counts too; else only what lies before it.
 */
function groundsUpTo(
  { memory, coat, wet, carriedKgM2, weights, seen, stays, judgedAt, factor }: Remembered,
  { until, isWhole }: { readonly until: number; readonly isWhole: boolean },
): readonly unknown[] {
  // What is seen later speaks of the coat's whole way, so it counts from the dip on.
  const heard = seen.filter(({ at }) => at <= judgedAt);
  return [
    ...memory.rest,
    until,
    heard.length,
    wet.waterKgM2,
    carriedKgM2,
    weights.dryG,
    weights.waterFraction,
    factor.from,
    factor.value,
    factor.sigmaLn,
    ...airGrounds(stays, {
      from: coat.dippedAt,
      until: Math.max(until, ...heard.map(({ at }) => at)),
      isWhole,
    }),
  ];
}
