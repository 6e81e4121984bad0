import { requirePositive } from "../stats/range.ts";
import { carries, isBelow, wallVerdict, type WallLoad } from "./wallVerdict.ts";

type Judged = Parameters<typeof wallVerdict>[0];

/** Ways that would each, alone, make a wall carry its head; null where one does not, or is no way for such a part. */
export type WallWays = {
  readonly coats: number | null;
  /** Ribs across the flat so far apart, mm. */
  readonly ribEveryMm: number | null;
  /** Vibrated sand in a box, with so many coats more. */
  readonly sandCoats: number | null;
  /** This head or less, m. */
  readonly headM: number | null;
  /** The head where the flat lies instead of standing, m. */
  readonly lyingHeadM: number | null;
  /** Cast in so many panels of this size, mm. */
  readonly panels: { readonly count: number; readonly widthMm: number; readonly lengthMm: number } | null;
};

/** More coats than this are no way out: judgement. */
export const mostCoats = 6;
const noWay: WallWays = {
  coats: null,
  ribEveryMm: null,
  sandCoats: null,
  headM: null,
  lyingHeadM: null,
  panels: null,
};
const mostPanelsASide = 6;
const leastRibMm = 50;
const ribStepMm = 10;
const leastHeadM = 0.02;

/**
 * Ways that would make this wall carry, each worked out with the verdict's own sum. Ribs go by 10 mm from 50 mm up, a
 * head by 10 mm, panels up to six a side. Only coats where the wall is below its floor. `headM` (up to 20) is the head behind the pressure of the case.
 */
export function wallWays(judged: Judged, { headM }: { readonly headM: number }): WallWays {
  requirePositive("headM", headM, { high: 20, unit: "m" });
  const { likelyMm, coatsToAdd } = wallVerdict(judged);
  const does = (more: Partial<WallLoad>): boolean =>
    carries({ ...judged, ...more }, { likelyMm, limits: judged.limits });
  const { part, support = {}, pressurePa } = judged;
  const withHead = (m: number): Partial<WallLoad> => ({ pressurePa: (pressurePa * m) / headM });
  const coats = coatsToAdd > 0 && coatsToAdd <= mostCoats ? coatsToAdd : null;
  // Nothing but shell helps a shell that is too thin to be handled, whatever the head is.
  if (isBelow(likelyMm, judged.floorMm)) return { ...noWay, coats };
  const lower = { coats, headM: lowerHeadM(headM, (m) => does(withHead(m))) };
  if (part.kind === "round")
    return { ...lower, ribEveryMm: null, sandCoats: null, lyingHeadM: null, panels: null };
  const [shortMm, longMm] = [Math.min(part.widthMm, part.lengthMm), Math.max(part.widthMm, part.lengthMm)];
  const lyingM = headM - shortMm / 1000;
  return {
    ...lower,
    ribEveryMm: ribsMm(Math.min(longMm, support.ribEveryMm ?? longMm), (ribEveryMm) =>
      does({ support: { ...support, ribEveryMm } }),
    ),
    sandCoats: sandCoats(judged, coatsToAdd),
    lyingHeadM: lyingM >= leastHeadM && does(withHead(lyingM)) ? lyingM : null,
    panels:
      part.kind === "rim"
        ? null
        : panelsOf(shortMm, longMm, (widthMm, lengthMm) =>
            does({ part: { kind: "flat", widthMm, lengthMm } }),
          ),
  };
}

/** The greatest head below the one there is, in steps of 10 mm. */
function lowerHeadM(headM: number, does: (headM: number) => boolean): number | null {
  let [fits, fails] = [0, Math.ceil(headM * 100)];
  while (fails - fits > 1) {
    const middle = Math.floor((fits + fails) / 2);
    if (does(middle / 100)) fits = middle;
    else fails = middle;
  }
  return fits / 100 >= leastHeadM ? fits / 100 : null;
}

function ribsMm(nowMm: number, does: (ribEveryMm: number) => boolean): number | null {
  for (let mm = Math.ceil(nowMm / ribStepMm - 1) * ribStepMm; mm >= leastRibMm; mm -= ribStepMm)
    if (does(mm)) return mm;
  return null;
}

/** Coats that are still wanted with sand around the shell; null where sand saves none. */
function sandCoats(judged: Judged, without: number): number | null {
  const { support = {} } = judged;
  if (support.sand === "vibrated") return null;
  const { coatsToAdd } = wallVerdict({ ...judged, support: { ...support, sand: "vibrated" } });
  return coatsToAdd < without && coatsToAdd <= mostCoats ? coatsToAdd : null;
}

/** The fewest equal panels that carry; of as many, the squarest. */
function panelsOf(
  shortMm: number,
  longMm: number,
  does: (widthMm: number, lengthMm: number) => boolean,
): WallWays["panels"] {
  const ways = Array.from({ length: mostPanelsASide ** 2 }, (_, i) => {
    const [across, along] = [(i % mostPanelsASide) + 1, Math.floor(i / mostPanelsASide) + 1];
    const [a, b] = [shortMm / across, longMm / along];
    return { count: across * along, widthMm: Math.min(a, b), lengthMm: Math.max(a, b) };
  }).sort((a, b) => a.count - b.count || a.lengthMm - b.lengthMm);
  return ways.find(({ count, widthMm, lengthMm }) => count > 1 && does(widthMm, lengthMm)) ?? null;
}
