import type { BeliefMemory } from "./coatBelief.ts";
import type { CoatCase, CoatSoFar } from "./coatDrying.ts";
import { coatUpTo, dryCoat, groundsOf } from "./coatDrying.ts";
import { airAt } from "../air/hanging.ts";
import type { Kept, Rest } from "../log/kept.ts";
import { isSame, keep, restOfAir } from "../log/kept.ts";

type Dried = ReturnType<typeof dryCoat>;

/** What was reckoned of coats before. Holds the coats asked for last, each once. */
export type CoatMemory = {
  readonly covered: Map<string, Kept<{ readonly dried: Dried }>>;
  readonly open: Map<string, Kept<{ readonly soFar: CoatSoFar }>>;
  readonly beliefs: BeliefMemory;
};

/**
 * As `dryCoat`, from what is kept of the same coat. A covered one is reckoned once as long as nothing it rests on
 * changes; the outer one goes on from the last reading before it was last judged.
 */
export function dryCoatFrom(memory: CoatMemory, id: string, of: CoatCase): Dried {
  return of.isOuter ? dryOpen(memory, id, of) : dryCovered(memory, id, of);
}

function dryCovered({ covered }: CoatMemory, id: string, of: CoatCase): Dried {
  const rest = restOf(of, of.judgedAt, { text: [of.judgedAt, of.factor], isWhole: true });
  const kept = covered.get(id);
  const dried = kept && isSame(kept, rest) ? kept.dried : dryCoat(of);
  keep(covered, id, { ...rest, dried });
  return dried;
}

function dryOpen({ open }: CoatMemory, id: string, of: CoatCase): Dried {
  const grounds = groundsOf(of);
  const { spread } = grounds;
  const restUpTo = (at: number): Rest => restOf(of, at, { text: [at, spread], isWhole: false });
  const kept = open.get(id);
  const isGood = kept && kept.soFar.at <= of.judgedAt && isSame(kept, restUpTo(kept.soFar.at));
  let soFar = isGood ? kept.soFar : null;
  const readAt = airAt(of.stays, of.judgedAt)?.reading.at ?? null;
  const from = soFar?.at ?? of.coat.dippedAt;
  if (readAt !== null && readAt > from && readAt <= of.judgedAt) {
    soFar = coatUpTo(readAt, of, { spread, soFar });
    keep(open, id, { ...restUpTo(readAt), soFar });
  } else if (isGood) keep(open, id, kept);
  return dryCoat(of, grounds, soFar);
}

/** `isWhole`: what lies about the end counts too; else only what lies before it. */
function restOf(
  { coat, wet, dipKgM2, carriedKgM2, weights, seen, fires, stays, judgedAt, places, factor }: CoatCase,
  until: number,
  { text, isWhole }: { readonly text: readonly unknown[]; readonly isWhole: boolean },
): Rest {
  const isIn = ({ at }: { readonly at: number }): boolean => at <= until;
  // What is seen later speaks of the coat's whole way, so it counts from the dip on.
  const heard = seen.filter(({ at }) => at <= judgedAt);
  const happened = [heard, fires.filter((at) => at <= until), coat.redips.filter(isIn)];
  const own = { ...coat, redips: [] };
  return {
    text: JSON.stringify([text, own, wet, dipKgM2, carriedKgM2, weights, places, factor, happened]),
    air: restOfAir(stays, {
      from: coat.dippedAt,
      until: Math.max(until, ...heard.map(({ at }) => at)),
      isWhole,
    }),
  };
}
