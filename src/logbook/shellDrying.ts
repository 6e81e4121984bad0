import { carryOver, coatDepthM } from "../physics/coat.ts";
import { coatWaterOf, prewetKgM2 } from "../trade/coatWater.ts";
import type { CoatCase } from "./coatDrying.ts";
import { dryCoat } from "./coatDrying.ts";
import { tableMm } from "./coatMm.ts";
import type { Stay } from "./hanging.ts";
import { airSources, staysOf } from "./hanging.ts";
import type { Coat, Piece, Recipe } from "./piece.ts";
import { ranges, within } from "./ranges.ts";
import type { CoatDrying, Surroundings } from "./standing.ts";

/** A kiln this hot has dried what hangs in it; common practice, no source. */
const firedDryC = 150;
const startingTarget = 0.95;

type Covered = {
  readonly sources: readonly unknown[];
  readonly dryings: readonly CoatDrying[];
  readonly leftKgM2: number;
};

/** Coats under another are judged at the dip that covered them and never again, so they are kept with the piece. */
const covered = new WeakMap<Piece, Covered>();

/**
 * How each coat of a piece dried, from the first to the outer one. A covered coat is told as it was at the moment
 * of the next dip; the outer one as it is now and will be.
 */
export function shellDrying(
  piece: Piece,
  { surroundings, recipe, now }: { surroundings: Surroundings; recipe: Recipe | null; now: number },
): readonly CoatDrying[] {
  const outer = piece.coats.at(-1);
  if (outer === undefined) return [];
  const stays = staysOf(piece, surroundings);
  const shell = { piece, stays, recipe, ownFactor: ownFactorOf(surroundings) };
  const sources = [recipe, shell.ownFactor, ...airSources(piece, surroundings)];
  const kept = covered.get(piece);
  const beneath = kept && isSame(kept.sources, sources) ? kept : { sources, ...dryCovered(shell) };
  covered.set(piece, beneath);
  // Once metal is in, the drying is over and stays as it was.
  const until = Math.min(now, piece.pours[0]?.at ?? now);
  const judgedAt = Math.max(until, outer.dippedAt);
  const place = { index: piece.coats.length - 1, judgedAt, leftKgM2: beneath.leftKgM2 };
  return [...beneath.dryings, dryCoat(caseOf(outer, place, shell)).drying];
}

type Shell = {
  readonly piece: Piece;
  readonly stays: readonly Stay[];
  readonly recipe: Recipe | null;
  readonly ownFactor: number | null;
};

function dryCovered(shell: Shell): Omit<Covered, "sources"> {
  const { coats } = shell.piece;
  const dryings: CoatDrying[] = [];
  let leftKgM2 = 0;
  for (const [index, coat] of coats.slice(0, -1).entries()) {
    const judgedAt = coats[index + 1]?.dippedAt ?? coat.dippedAt;
    const dried = dryCoat(caseOf(coat, { index, judgedAt, leftKgM2 }, shell));
    dryings.push(dried.drying);
    ({ leftKgM2 } = dried);
  }
  return { dryings, leftKgM2 };
}

function caseOf(
  coat: Coat,
  { index, judgedAt, leftKgM2 }: { index: number; judgedAt: number; leftKgM2: number },
  { piece, stays, recipe, ownFactor }: Shell,
): CoatCase {
  const beneath = piece.coats.slice(0, index);
  const primeNumber = beneath.filter(({ kind }) => kind === "prime").length + 1;
  const { waterKgM2, criticalShare } = coatWaterOf(coat.kind, primeNumber);
  const newKgM2 = waterKgM2 + (coat.prewet ? prewetKgM2.value : 0);
  const beneathMm = beneath.reduce((sum, one) => sum + tableMm(one), 0);
  const target = coat.step === null ? undefined : recipe?.coats[coat.step]?.targetDryness;
  return {
    coat,
    wet: {
      ...carryOver({ leftKgM2, newKgM2, criticalShare }),
      depthM: coatDepthM({ coatMm: tableMm(coat), beneathMm: Math.min(beneathMm, 100) }),
      dryFraction: within(ranges.targetDryness, target) ? target : startingTarget,
    },
    dipKgM2: waterKgM2,
    carriedKgM2: leftKgM2,
    stays,
    seen: piece.dryness.filter(({ coatId }) => coatId === coat.id),
    fires: firesOf(piece),
    judgedAt,
    isOuter: index === piece.coats.length - 1,
    ownFactor,
    areaM2: piece.plan.areaM2,
  };
}

/** The moments at which fire had dried whatever hung on the shell then. */
function firesOf({ burnouts, firings, preheats }: Piece): readonly number[] {
  const kiln = burnouts.flatMap(({ readings, ended }) => [
    ...readings.filter(({ kilnC }) => kilnC >= firedDryC).map(({ at }) => at),
    ...(ended === null || ended.result === "stopped" ? [] : [ended.at]),
  ]);
  const heated = preheats.filter(({ shellC }) => shellC >= firedDryC);
  return [...kiln, ...firings.map(({ at }) => at), ...heated.map(({ at }) => at)];
}

function ownFactorOf({ shop }: Surroundings): number | null {
  return within(ranges.dryingFactor, shop.dryingFactor) ? shop.dryingFactor : null;
}

const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);
