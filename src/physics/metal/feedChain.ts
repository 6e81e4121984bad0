import { coolingOf, type CoolingSolid } from "../heat/coolingSolid.ts";
import { atLeast, pathModulusRatio } from "./feeding.ts";
import { freezeTimeS } from "./freezing.ts";
import { requireWithin } from "../stats/range.ts";

export type LinkRole = "casting" | "gate" | "runner" | "riser" | "sprue" | "cup";

/** One solid on the way the feed metal takes, listed from the far end of the casting to the cup. */
export type ChainLink = { readonly name: string; readonly role: LinkRole; readonly solid: CoolingSolid };

export type LinkVerdict =
  /** The far end: nothing before it to feed. */
  | "first"
  | "feeds"
  /** Freezes after what it feeds but by less than the ratio. */
  | "tight"
  /** Freezes before what it feeds: the way is shut. */
  | "early";

export type LinkSeen = {
  readonly name: string;
  readonly role: LinkRole;
  readonly modulusMm: number;
  /** Null for an endless solid. */
  readonly volumeMm3: number | null;
  readonly freezeS: number;
  /** Modulus this link would need: the ratio times the largest before it; null for the first. */
  readonly needsMm: number | null;
  /** Has over needs. */
  readonly reach: number | null;
  /** How long before what it feeds it freezes; 0 where it does not. */
  readonly earlyS: number;
  readonly verdict: LinkVerdict;
};

export type FeedChain = {
  readonly links: readonly LinkSeen[];
  /** The first link that shuts the way; null where none does. */
  readonly shutAt: LinkSeen | null;
  /** Every link reaches the ratio. */
  readonly isMet: boolean;
};

/** Freezing of a modulus: s/mm² (or s/mm^n) and the exponent, 2 in a thick mould and about 1 in a thin hot shell. */
export type FreezingLaw = { readonly constantSMm2: number; readonly exponent?: number | undefined };

/**
 * The third check, along a chain: each modulus on the way to the cup at least 1.1 times the largest before it. Where
 * it isn't, that link freezes early and cuts off all that lies behind it. Refuses an empty chain.
 */
export function feedChain({
  links,
  law,
  ratio = pathModulusRatio,
}: {
  links: readonly ChainLink[];
  law: FreezingLaw;
  ratio?: number | undefined;
}): FeedChain {
  if (links.length === 0) throw new RangeError("a chain needs at least one solid, found none");
  requireWithin("ratio", ratio, { low: 1, high: 3, unit: "" });
  let largestMm = 0;
  const seen = links.map((link): LinkSeen => {
    const now = seeLink({ link, law, ratio, largestMm });
    largestMm = Math.max(largestMm, now.modulusMm);
    return now;
  });
  return {
    links: seen,
    shutAt: seen.find(({ verdict }) => verdict === "early") ?? null,
    isMet: seen.every(({ verdict }) => verdict === "first" || verdict === "feeds"),
  };
}

function seeLink({
  link,
  law,
  ratio,
  largestMm,
}: {
  link: ChainLink;
  law: FreezingLaw;
  ratio: number;
  largestMm: number;
}): LinkSeen {
  const { volumeMm3, areaMm2, isEndless } = coolingOf(link.solid);
  const modulusMm = volumeMm3 / areaMm2;
  const freezeS = freezeTimeS({ ...law, modulusMm });
  const base = {
    name: link.name,
    role: link.role,
    modulusMm,
    volumeMm3: isEndless ? null : volumeMm3,
    freezeS,
  };
  if (largestMm === 0) return { ...base, needsMm: null, reach: null, earlyS: 0, verdict: "first" };
  const needsMm = largestMm * ratio;
  const isEarly = !atLeast(modulusMm, largestMm);
  return {
    ...base,
    needsMm,
    reach: modulusMm / needsMm,
    earlyS: isEarly ? freezeTimeS({ ...law, modulusMm: largestMm }) - freezeS : 0,
    verdict: isEarly ? "early" : atLeast(modulusMm, needsMm) ? "feeds" : "tight",
  };
}
