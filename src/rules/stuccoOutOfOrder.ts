import type { Coat } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { practice } from "../trade/practice.ts";
import type { Stucco } from "../trade/stuccos.ts";
import { stuccoOf } from "../trade/stuccos.ts";
import { figure } from "./finding.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"stucco-out-of-order">;

/**
 * Stuccos should go from fine to coarse in steps: a coarse one on the first prime marks the metal, one far
 * coarser than the coat beneath bridges over it, a finer one over a coarser fills badly. Coats after a burnout
 * are mending and are left alone, and so are those from before the log.
 */
export function stuccoOutOfOrder({ piece }: Standing): readonly Found[] {
  const coats = piece.coats.filter(({ afterBurnout, kind }) => !afterBurnout && kind !== "seal");
  const known = coats.flatMap((coat) => {
    const stucco = stuccoIn(coat);
    return stucco === null ? [] : [{ coat, stucco }];
  });
  const logged = coats.filter(({ beforeLog }) => beforeLog === undefined);
  const first = known.find(({ coat }) => coat === coats[0] && coat === logged[0] && coat.kind === "prime");
  const steps = known.flatMap((over, i) => {
    const under = known[i - 1];
    return under === undefined || over.coat.beforeLog !== undefined ? [] : [ofStep(under, over)];
  });
  return [
    ...(first === undefined ? [] : ofFirst(first)),
    ...steps.filter((found) => found !== null),
    ...ofUnknown(logged.filter((coat) => stuccoIn(coat) === null)),
  ];
}

type Laid = { readonly coat: Coat; readonly stucco: Stucco };

const stuccoIn = ({ stuccoId }: Coat): Stucco | null => (stuccoId === null ? null : stuccoOf(stuccoId));
const meanMm = ({ fineMm, coarseMm }: Stucco): number => (fineMm + coarseMm) / 2;

function ofFirst({ coat, stucco }: Laid): readonly Found[] {
  const { value: limitMm, source } = practice.firstPrimeCoarseMm;
  if (stucco.coarseMm <= limitMm) return [];
  return [
    {
      rule: "stucco-out-of-order",
      variant: "coarse-first",
      level: "watch",
      figures: { grainMm: figure(stucco.coarseMm, "mm"), limitMm: figure(limitMm, "mm") },
      texts: { stucco: stucco.label },
      entries: [coat.id],
      source,
    },
  ];
}

function ofStep(under: Laid, over: Laid): Found | null {
  const ratio = meanMm(over.stucco) / meanMm(under.stucco);
  const isSkipped = ratio > practice.gradeRatio.value;
  if (!isSkipped && over.stucco.order >= under.stucco.order) return null;
  return {
    rule: "stucco-out-of-order",
    variant: isSkipped ? "grade-skipped" : "finer",
    level: isSkipped ? "watch" : "note",
    figures: {
      coat: figure(over.coat.number, "count"),
      ratio: figure(ratio, "factor"),
      limit: figure(practice.gradeRatio.value, "factor"),
    },
    texts: { stucco: over.stucco.label, under: under.stucco.label },
    entries: [under.coat.id, over.coat.id],
    source: practice.gradeRatio.source,
  };
}

function ofUnknown(coats: readonly Coat[]): readonly Found[] {
  if (coats.length === 0) return [];
  return [
    {
      rule: "stucco-out-of-order",
      variant: "not-known",
      level: "note",
      figures: { coats: figure(coats.length, "count") },
      texts: {},
      entries: coats.map(({ id }) => id),
      source: "common practice, no source",
    },
  ];
}
