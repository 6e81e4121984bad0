import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { SaidOfBeneath } from "../entries/pieceBodies.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Piece } from "../piece/piece.ts";
import type { CoatDrying, CoverAnswer } from "../piece/standing.ts";
import type { SaidAnewWhy, SaidThen } from "./said.ts";
import type { Surroundings } from "../piece/surroundings.ts";
import { hoursNeeded } from "./hoursNeeded.ts";
import { knewOfCoat, knowsAnew } from "./knewOfCoat.ts";
import { dryingSumsVersion } from "./dryingSums.ts";

type Around = Pick<Surroundings, "readings">;

/** What the entry of a coat put on at `now`, epoch ms, keeps of what is said of the outer one; null before the first. */
export function sayingOf(
  piece: Piece,
  {
    outer,
    cover,
    now,
    around,
  }: {
    readonly outer: CoatDrying | null;
    readonly cover: CoverAnswer | null;
    readonly now: number;
    readonly around: Around;
  },
): SaidOfBeneath | null {
  if (outer === null || cover === null) return null;
  const { coat, verdict, leftShare, leftLow = null, leftHigh = null } = outer;
  const neededH = hoursNeeded(outer, now);
  return {
    coatId: coat.id,
    saidAt: now,
    cover: cover.state,
    dryness: verdict,
    leftShare,
    leftLow,
    leftHigh,
    neededH: within(ranges.neededH, neededH) ? neededH : null,
    sumsVersion: dryingSumsVersion,
    knew: knewOfCoat({ piece, coat, until: now }, around),
  };
}

/** A dip logged at the tap is at most this far from what was said before it; judgement. */
const sameMomentMs = 2 * minuteMs;

/**
 * The coats of a shell with what was said of each before the tap that covered it. That stands, whatever is worked out
 * since and by whatever sums, until readings or checks of its time come in or are struck: then what is worked out now
 * counts, and what was said stays beside it. Coats of which nothing was kept are as they are worked out.
 */
export function asSaid(
  dryings: readonly CoatDrying[],
  { piece, around }: { readonly piece: Piece; readonly around: Around },
): readonly CoatDrying[] {
  return dryings.map((drying, i) => {
    const over = piece.coats[i + 1];
    const kept = over?.said;
    if (over === undefined || kept === undefined || kept.coatId !== drying.coat.id) return drying;
    const { saidAt: until } = kept;
    const why: readonly SaidAnewWhy[] = [
      ...knowsAnew(kept.knew, { piece, coat: drying.coat, until }, around),
      ...(Math.abs(over.dippedAt - until) > sameMomentMs
        ? [{ of: "dip", how: "changed", count: 1, at: over.dippedAt } as const]
        : []),
    ];
    const said = { ...kept, leftShare: known(kept.leftShare) };
    if (why.length > 0 && differs(said, drying)) {
      const anew = { leftShare: drying.leftShare, dryness: drying.verdict, why };
      return { ...drying, said: { ...said, anew } };
    }
    return { ...drying, verdict: said.dryness, leftShare: said.leftShare, said: { ...said, anew: null } };
  });
}

const known = (share: number | null): number | null => (within(ranges.leftShare, share) ? share : null);

/** What is shown: whole percent of water, and the word. */
function differs(
  { leftShare, dryness }: Pick<SaidThen, "leftShare" | "dryness">,
  { leftShare: nowLeft, verdict }: CoatDrying,
): boolean {
  const percent = (share: number | null): number | null => (share === null ? null : Math.round(100 * share));
  return dryness !== verdict || percent(leftShare) !== percent(nowLeft);
}
