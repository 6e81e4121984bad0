import type { Piece } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { airReadingOld } from "./airReadingOld.ts";
import { airTooDamp } from "./airTooDamp.ts";
import { burnoutResidue } from "./burnoutResidue.ts";
import { cannotJudgeWall } from "./cannotJudgeWall.ts";
import { coreLift } from "./coreLift.ts";
import { dippedFromUnfitBucket } from "./dippedFromUnfitBucket.ts";
import type { Finding, Level } from "./finding.ts";
import { firedTooLittle } from "./firedTooLittle.ts";
import { frost } from "./frost.ts";
import { lastCoatDamp } from "./lastCoatDamp.ts";
import { noSealCoat } from "./noSealCoat.ts";
import { openCrack } from "./openCrack.ts";
import { patchedWithoutWire } from "./patchedWithoutWire.ts";
import { patternInside } from "./patternInside.ts";
import { pouredColdShell } from "./pouredColdShell.ts";
import { primeDryingHard } from "./primeDryingHard.ts";
import { primeLeftBare } from "./primeLeftBare.ts";
import { primeTemperatureMoved } from "./primeTemperatureMoved.ts";
import { recipeNotFollowed } from "./recipeNotFollowed.ts";
import { recoatedBeforeDry } from "./recoatedBeforeDry.ts";
import { stillSpeaks } from "./speaksUntil.ts";
import type { Asked } from "./stage.ts";
import { runBrokeALimit } from "./runBrokeALimit.ts";
import { shellDampAgain } from "./shellDampAgain.ts";
import { stuccoOutOfOrder } from "./stuccoOutOfOrder.ts";
import { wallTooThin } from "./wallTooThin.ts";

/** The rules, what may hurt someone first; findings of one level keep this order. */
const rules: readonly ((standing: Asked) => readonly Finding[])[] = [
  openCrack,
  patternInside,
  burnoutResidue,
  shellDampAgain,
  lastCoatDamp,
  wallTooThin,
  coreLift,
  runBrokeALimit,
  firedTooLittle,
  pouredColdShell,
  frost,
  recoatedBeforeDry,
  dippedFromUnfitBucket,
  cannotJudgeWall,
  airTooDamp,
  airReadingOld,
  primeTemperatureMoved,
  primeDryingHard,
  primeLeftBare,
  stuccoOutOfOrder,
  recipeNotFollowed,
  noSealCoat,
  patchedWithoutWire,
];

const weight: Readonly<Record<Level, number>> = { hold: 0, watch: 1, note: 2 };

/**
 * What the rules say of a piece now, heaviest first: what can still be acted on. What is past or was read and signed
 * at a review is left out.
 */
export const findingsFor = (standing: Standing): readonly Finding[] =>
  allFindings(standing).filter((finding) => finding.past !== true && !isSigned(finding, standing.piece));

/**
 * What the rules say if the coating ends here, for the review before burnout: coats of the recipe that are not
 * on the piece count as left out, the wall is judged as it stands, and what is past is told once more.
 */
export const reviewFindingsFor = (standing: Standing): readonly Finding[] =>
  allFindings({ ...standing, next: null, action: { kind: "review" }, atReview: true });

const allFindings = (standing: Asked): readonly Finding[] =>
  rules
    .flatMap((rule) => rule(standing))
    .filter(({ rule }) => stillSpeaks(rule, standing.piece))
    .map((finding) => lightenPassed(finding, standing.piece))
    .toSorted((a, b) => weight[a.level] - weight[b.level]);

/** A note that stood on the page when the review was signed was read there. */
function isSigned({ level, entries }: Finding, piece: Piece): boolean {
  const review = piece.reviews.at(-1);
  if (level !== "note" || review === undefined) return false;
  const since = eventsAfter(piece, review.at);
  return !entries.some((id) => since.has(id));
}

export function worstLevel(findings: readonly Finding[]): Level | null {
  return findings.reduce<Level | null>(
    (worst, { level }) => (worst === null || weight[level] < weight[worst] ? level : worst),
    null,
  );
}

/** Notes alone leave a review clear; clear says that the rules found nothing, never that the shell will hold. */
export function reviewVerdict(findings: readonly Finding[]): "hold" | "watch" | "clear" {
  const worst = worstLevel(findings);
  return worst === "hold" || worst === "watch" ? worst : "clear";
}

/**
 * A hold that was passed in writing is one to watch from then on, with the reason that was given. It holds anew
 * when a coat was added since, or when it rests on something that came later.
 */
function lightenPassed(finding: Finding, piece: Piece): Finding {
  const review = piece.reviews.at(-1);
  if (finding.level !== "hold" || review === undefined || review.coats !== piece.coats.length) return finding;
  const passed = review.passed.find(({ rule }) => rule === finding.rule);
  const since = eventsAfter(piece, review.at);
  if (passed === undefined || finding.entries.some((id) => since.has(id))) return finding;
  return { ...finding, level: "watch", texts: { ...finding.texts, passedBecause: passed.reason } };
}

function eventsAfter(piece: Piece, at: number): ReadonlySet<string> {
  const events = [
    ...piece.coats.map(({ id, dippedAt }) => ({ id, at: dippedAt })),
    ...piece.coats.flatMap(({ redips }) => redips),
    ...piece.dryness,
    ...piece.wall,
    ...piece.cracks.flatMap((crack) => (crack.patched === null ? [crack] : [crack, crack.patched])),
    ...piece.firings,
    ...piece.preheats,
    ...piece.pours,
    ...piece.burnouts.map(({ id, startedAt }) => ({ id, at: startedAt })),
  ];
  return new Set(events.filter((event) => event.at > at).map(({ id }) => id));
}
