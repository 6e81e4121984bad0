import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { carryOver, coatDepthM } from "../../physics/drying/coat.ts";
import { coatWaterOf, prewetKgM2 } from "../../trade/coatWater.ts";
import type { CoatCase } from "./coatDrying.ts";
import { dryCoat } from "./coatDrying.ts";
import { dryCoatFrom } from "./coatMemory.ts";
import { coatMm, coatWaterKgM2 } from "./coatMm.ts";
import type { CoatWeights } from "./coatSpan.ts";
import { weighed } from "./coatWeights.ts";
import { coatFactor } from "./dryingFactor.ts";
import type { DryingMemory } from "./dryingMemory.ts";
import type { Stay } from "../air/hanging.ts";
import { airAt, staysOf } from "../air/hanging.ts";
import { hotTimes } from "../fire/hotTimes.ts";
import type { Coat, Piece, Recipe } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import { slowPlacesOf } from "./slowPlace.ts";
import { bucketFraction, startingFraction } from "./slurryWater.ts";
import type { CoatDrying } from "../piece/standing.ts";
import type { Surroundings } from "../piece/surroundings.ts";

const startingTarget = 0.95;

type Covered = {
  readonly dryings: readonly CoatDrying[];
  readonly leftKgM2: number;
};

/**
 * How each coat of a piece dried, from the first to the outer one. A covered coat is told as it was at the moment
 * of the next dip; the outer one as it is now and will be. With a memory, only what is new since the last call is
 * worked out.
 */
export function shellDrying(piece: Piece, from: DryingFrom): readonly CoatDrying[] {
  const outer = piece.coats.at(-1);
  if (outer === undefined) return [];
  const shell = shellOf(piece, from);
  const beneath = dryCovered(shell);
  const place = outerPlace(outer, shell, { now: from.now, ...beneath });
  return [...beneath.dryings, dryOne(outer, place, shell).drying];
}

export type DryingFrom = {
  readonly surroundings: Surroundings;
  readonly recipe: Recipe | null;
  readonly now: number;
  readonly memory?: DryingMemory | null;
};

/** One coat as the sum meets it, for whoever wants to see its whole way; null when the piece has no such coat. */
export function coatCaseOf(piece: Piece, coatId: string, from: DryingFrom): CoatCase | null {
  const index = piece.coats.findIndex(({ id }) => id === coatId);
  const coat = piece.coats[index];
  if (coat === undefined) return null;
  const shell = shellOf(piece, from);
  const { dryings, leftKgM2 } = dryCovered(shell);
  const over = piece.coats[index + 1];
  if (over === undefined)
    return caseOf(coat, outerPlace(coat, shell, { now: from.now, leftKgM2, dryings }), shell);
  const carriedKgM2 = dryings[index]?.carriedKgM2 ?? 0;
  const beneath = dryings[index - 1] ?? null;
  return caseOf(coat, { index, judgedAt: over.dippedAt, leftKgM2: carriedKgM2, beneath }, shell);
}

function shellOf(piece: Piece, { surroundings, recipe, memory = null }: DryingFrom): Shell {
  return { piece, surroundings, stays: staysOf(piece, surroundings, memory?.memo), recipe, memory };
}

/** Once metal is in, the drying is over and stays as it was. */
function outerPlace(
  outer: Coat,
  { piece }: Shell,
  { now, leftKgM2, dryings }: Pick<Covered, "leftKgM2" | "dryings"> & { readonly now: number },
): Place {
  const until = Math.min(now, piece.pours[0]?.at ?? now);
  return {
    index: piece.coats.length - 1,
    judgedAt: Math.max(until, outer.dippedAt),
    leftKgM2,
    beneath: dryings.at(-1) ?? null,
  };
}

type Shell = {
  readonly piece: Piece;
  readonly surroundings: Surroundings;
  readonly stays: readonly Stay[];
  readonly recipe: Recipe | null;
  readonly memory: DryingMemory | null;
};

type Place = {
  readonly index: number;
  readonly judgedAt: number;
  readonly leftKgM2: number;
  /** The coat beneath, as it was at this dip; null under the first. */
  readonly beneath: CoatDrying | null;
};

function dryOne(coat: Coat, place: Place, shell: Shell): ReturnType<typeof dryCoat> {
  const of = caseOf(coat, place, shell);
  const { memory } = of;
  return memory === null ? dryCoat(of) : dryCoatFrom({ ...of, memory });
}

/** Coats under another are judged at the dip that covered them, once and for all. */
function dryCovered(shell: Shell): Covered {
  const { coats } = shell.piece;
  const dryings: CoatDrying[] = [];
  let leftKgM2 = 0;
  for (const [index, coat] of coats.slice(0, -1).entries()) {
    const judgedAt = coats[index + 1]?.dippedAt ?? coat.dippedAt;
    const dried = dryOne(coat, { index, judgedAt, leftKgM2, beneath: dryings.at(-1) ?? null }, shell);
    const over = coats[index + 1];
    if (coat.beforeLog !== undefined && over?.beforeLog !== undefined) {
      dryings.push(notJudged(dried.drying));
      leftKgM2 = 0;
      continue;
    }
    const isGuess = coat.beforeLog !== undefined && isOfUnreadAir(dried.drying);
    dryings.push(isGuess ? notJudged(dried.drying) : dried.drying);
    ({ leftKgM2 } = dried);
  }
  return { dryings, leftKgM2 };
}

/** Neither dry nor wet for certain, in air that was never read as far as the sum looked back. */
const isOfUnreadAir = ({ verdict, evidence, basis }: CoatDrying): boolean =>
  evidence === null && basis.assumed && verdict !== "dry" && verdict !== "wet";

/** How it dried lies before the log: no time, no water and no verdict are given for it. */
const notJudged = (drying: CoatDrying): CoatDrying => ({
  ...drying,
  leftShare: null,
  leftLow: undefined,
  leftHigh: undefined,
  waterKgM2: null,
  readyAt: { early: null, likely: null, late: null },
  reason: "before-log",
  condensed: false,
  frozen: null,
  evidence: null,
  belief: null,
  saidAlone: null,
  verdict: "unknown",
  curve: [],
});

function caseOf(
  coat: Coat,
  { index, judgedAt, leftKgM2, beneath: under }: Place,
  { piece, surroundings, stays, recipe, memory }: Shell,
): CoatCase {
  const { shop } = surroundings;
  const beneath = piece.coats.slice(0, index);
  const primeNumber = beneath.filter(({ kind }) => kind === "prime").length + 1;
  const { criticalShare } = coatWaterOf(coat.kind, primeNumber);
  const waterKgM2 = coatWaterKgM2({ kind: coat.kind, primeNumber }, shop.slurryKgM2);
  const newKgM2 = waterKgM2 + (coat.prewet ? prewetKgM2.value : 0);
  const beneathMm = beneath.reduce((sum, one) => sum + coatMm(one, shop.buildMm), 0);
  const target = coat.step === null ? undefined : recipe?.coats[coat.step]?.targetDryness;
  const air = airAt(stays, coat.dippedAt)?.reading.air ?? null;
  return {
    coat,
    wet: {
      ...carryOver({ leftKgM2, newKgM2, criticalShare }),
      depthM: coatDepthM({ coatMm: coatMm(coat, shop.buildMm), beneathMm: Math.min(beneathMm, 100) }),
      dryFraction: within(ranges.targetDryness, target) ? target : startingTarget,
    },
    dipKgM2: waterKgM2,
    carriedKgM2: leftKgM2,
    stays,
    seen: piece.dryness.filter(({ coatId }) => coatId === coat.id),
    fires: hotTimes(piece),
    judgedAt,
    isOuter: index === piece.coats.length - 1,
    factor: coatFactor(surroundings, { coatId: coat.id, kind: coat.kind, air }),
    weights: weightsOf(coat, { piece, surroundings, index, primeNumber, leftKgM2, newKgM2, beneath: under }),
    places: slowPlacesOf(piece.plan),
    memory: memory && { ...memory, id: `${piece.id} ${coat.id}` },
  };
}

/** A coat carrying more than this share of its own water up from beneath was not put on a dry piece; judgement. */
const dryBeneathShare = 0.05;

function weightsOf(
  coat: Coat,
  {
    piece,
    surroundings,
    index,
    primeNumber,
    leftKgM2,
    newKgM2,
    beneath,
  }: {
    readonly piece: Piece;
    readonly surroundings: Surroundings;
    readonly index: number;
    readonly primeNumber: number;
    readonly leftKgM2: number;
    readonly newKgM2: number;
    readonly beneath: CoatDrying | null;
  },
): CoatWeights {
  const { areaM2 } = piece.plan;
  // Prewetting is in the mass but not in the slurry, and a damp piece is no dry mass to start from.
  const isDry = !coat.prewet && leftKgM2 <= dryBeneathShare * newKgM2;
  const dryG = isDry ? dryMassG(piece, coat, { index, beneath }) : null;
  return {
    dryG: within(weighed, dryG) ? dryG : null,
    waterFraction:
      bucketFraction(surroundings.buckets.get(coat.bucketId ?? ""), coat.dippedAt) ??
      startingFraction(coat.kind, primeNumber),
    areaM2: within(ranges.areaM2, areaM2) ? areaM2 : null,
    byAreaG: within(ranges.areaM2, areaM2) ? (leftKgM2 + newKgM2) * areaM2 * 1000 : null,
    hasStucco: coat.stuccoId !== null,
  };
}

/** A weighing this short before a dip is of the piece as it was dipped, whatever the sum knows; judgement. */
const justBeforeMs = 30 * minuteMs;

/** The last weighing before the dip: as told, else the last one of the coat beneath once that was dry. */
function dryMassG(
  { weighings, dryness }: Piece,
  { dippedAt }: Coat,
  { index, beneath }: { readonly index: number; readonly beneath: CoatDrying | null },
): number | null {
  const told = weighings.findLast(({ at, coats: on }) => at <= dippedAt && on === index);
  // A coat weighed while still wet, and then left to dry, is no dry mass for the next one.
  const dryFrom = Math.min(beneath?.readyAt.likely ?? Infinity, dippedAt - justBeforeMs);
  const dried = dryness.findLast(
    (seen) =>
      seen.method === "weight" &&
      seen.coatId === beneath?.coat.id &&
      seen.at >= dryFrom &&
      seen.at <= dippedAt &&
      (seen.moment ?? "drying") === "drying",
  );
  if (dried?.method === "weight" && dried.at > (told?.at ?? -Infinity)) return dried.massG;
  return told?.massG ?? null;
}
