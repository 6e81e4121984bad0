import type { WetLayer as WetCoat } from "../../physics/drying/coat.ts";
import type { CoatTrack } from "../../physics/drying/coatTrack.ts";
import type { DryCourse } from "../../physics/drying/dryAlong.ts";
import { dryAlong, stepsInRow } from "../../physics/drying/dryAlong.ts";
import type { DryStep } from "../../physics/drying/dryStep.ts";
import { coatVariance } from "../../physics/stats/spread.ts";
import { readyWaterKgM2 } from "../../physics/drying/coat.ts";
import { seenDry, seenWet } from "./coatTrack.ts";
import type { DryEvidence } from "./dryEvidence.ts";
import type { CoatDrying } from "../piece/standing.ts";

type Evidence = CoatDrying["evidence"];

/**
 * Lets the coat take what was said plainly of it, and gives the word that stands afterwards. `stepsTo` gives the air
 * from the slurry to a time; null where it was not read.
 *
 * Measured dry ends it. A hand that felt it dry moves nothing here: it has moved the belief. A plain "wet" makes the
 * water and the coat's own factor what they must be for it to be wet then (`slowEnough`).
 */
export function takeSaid(
  track: CoatTrack,
  said: DryEvidence,
  { before, stepsTo }: { before: Evidence; stepsTo: (at: number) => readonly DryStep[] | null },
): Evidence {
  const { seen } = said;
  switch (said.says) {
    case "wet": {
      const steps = stepsTo(seen.at);
      const byShare = said.leastShare * track.coat.waterKgM2;
      const leastKgM2 = said.isFelt ? Math.max(byShare, dampKgM2(track)) : byShare;
      if (steps === null) holdAt(track, leastKgM2);
      else slowEnough(track, { steps, leastKgM2, isFelt: said.isFelt });
      return { says: "wet", seen };
    }
    case "dry": {
      if (said.by !== "felt") seenDry(track, { at: seen.at });
      const wasMeasured = before?.says === "dry" && before.by !== "felt";
      // Dry since it was first measured so: a further check makes it dry no later.
      const saysLess = wasMeasured && (said.by === "felt" || before.whole || !said.whole);
      return saysLess ? before : { says: "dry", seen, by: said.by, whole: said.whole };
    }
    case "losing":
      // A loss since before the dry word may have gone before it.
      if (before?.says !== "dry" || before.by === "felt" || said.sinceAt < before.seen.at) return before;
      holdAt(track, dampKgM2(track));
      return null;
  }
}

/** A coat that is plainly not dry holds at least what lies half way from ready to its critical water; judgement. */
const dampKgM2 = ({ coat }: CoatTrack): number => (readyWaterKgM2(coat) + coat.criticalKgM2) / 2;

function holdAt(track: CoatTrack, leastKgM2: number): void {
  seenWet(track, (lane) => ({ ...lane, waterKgM2: Math.max(lane.waterKgM2, leastKgM2) }));
}

/**
 * A film that has not broken by now breaks later than now by as much as one coat varies about its shop: the tenth, half
 * and nine tenths of the half bell above the least factor, of standard deviation σ = √0.0625 of ln t. Judgement.
 */
const sigma = Math.sqrt(coatVariance);
const beyond = {
  early: Math.exp(0.1257 * sigma),
  likely: Math.exp(0.6745 * sigma),
  late: Math.exp(1.6449 * sigma),
} as const;

/**
 * A coat found wet has proven slow: its factor on time is at least the one by which as much water is left now as was
 * found, walked from the slurry on through the air it had. Each guess takes the greater of its own factor and that one
 * (a little beyond it for a hand, which feels that the film is there and not how near it is to breaking), and its
 * water by the same walk. So the time still to go is in proportion to the time already spent: a prime of which the
 * film should break after 45 min and the rest take 45 more, felt wet at 8 h, has about as long again before it and
 * not 45 min. What says less than the sum already knew moves nothing, and nothing ever moves sooner.
 */
function slowEnough(
  track: CoatTrack,
  { steps, leastKgM2, isFelt }: { steps: readonly DryStep[]; leastKgM2: number; isFelt: boolean },
): void {
  const { coat } = track;
  const least = leastFactor(coat, { steps, leastKgM2 });
  seenWet(track, (lane, guess) => {
    const factor = Math.max(lane.factor, least * (isFelt ? beyond[guess] : 1));
    const walkedKgM2 = waterLeft(coat, { steps, factor });
    return { ...lane, factor, waterKgM2: Math.max(lane.waterKgM2, leastKgM2, walkedKgM2) };
  });
}

function waterLeft(coat: WetCoat, { steps, factor }: { steps: readonly DryStep[]; factor: number }): number {
  const course: DryCourse = { factor, waterKgM2: coat.waterKgM2, readyAt: null, isFrozen: false };
  dryAlong([course], { coat, air: stepsInRow(steps) });
  return course.waterKgM2;
}

/** No coat is slower than this; past it the sum has nothing more to say. */
const mostFactor = 1000;

/** The least factor by which this much water is left after these stretches of air; 0 where the coat can't but hold it. */
function leastFactor(
  coat: WetCoat,
  { steps, leastKgM2 }: { steps: readonly DryStep[]; leastKgM2: number },
): number {
  let [low, high] = [Math.log(1e-3), Math.log(mostFactor)];
  const holds = (ln: number): boolean => waterLeft(coat, { steps, factor: Math.exp(ln) }) >= leastKgM2;
  if (holds(low)) return 0;
  if (!holds(high)) return mostFactor;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}
