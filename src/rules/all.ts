import type { Piece } from "../logbook/piece.ts";
import type { Standing } from "../logbook/standing.ts";
import { airReadingOld } from "./airReadingOld.ts";
import { airTooDamp } from "./airTooDamp.ts";
import { burnoutResidue } from "./burnoutResidue.ts";
import { cannotJudgeWall } from "./cannotJudgeWall.ts";
import { dampRecoatWeakens } from "./dampRecoatWeakens.ts";
import { dippedFromUnfitBucket } from "./dippedFromUnfitBucket.ts";
import type { Finding, Level } from "./finding.ts";
import { firedTooLittle } from "./firedTooLittle.ts";
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
import { isPastPour } from "./stage.ts";
import { runBrokeALimit } from "./runBrokeALimit.ts";
import { shellDampAgain } from "./shellDampAgain.ts";
import { stuccoOutOfOrder } from "./stuccoOutOfOrder.ts";
import { wallTooThin } from "./wallTooThin.ts";

/** The rules, what may hurt someone first; findings of one level keep this order. */
const rules: readonly ((standing: Standing) => readonly Finding[])[] = [
  openCrack,
  patternInside,
  burnoutResidue,
  shellDampAgain,
  lastCoatDamp,
  wallTooThin,
  runBrokeALimit,
  firedTooLittle,
  pouredColdShell,
  recoatedBeforeDry,
  dampRecoatWeakens,
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

/** All that the rules say of a piece, heaviest first. */
export function findingsFor(standing: Standing): readonly Finding[] {
  const { piece } = standing;
  return rules
    .flatMap((rule) => rule(standing))
    .map((finding) => lightenPassed(finding, piece))
    .map((finding) => lightenPast(finding, piece))
    .toSorted((a, b) => weight[a.level] - weight[b.level]);
}

/**
 * What the rules say if the coating ends here, for the review before burnout: coats of the recipe that are not
 * on the piece count as left out, and the wall is judged as it stands.
 */
export const reviewFindingsFor = (standing: Standing): readonly Finding[] =>
  findingsFor({ ...standing, next: null, action: { kind: "review" } });

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
    ...piece.coats.flatMap(({ redips }) => redips),
    ...piece.dryness,
    ...piece.wall,
    ...piece.cracks.flatMap((crack) => (crack.patched === null ? [crack] : [crack, crack.patched])),
    ...piece.firings,
  ];
  return new Set(events.filter((event) => event.at > at).map(({ id }) => id));
}

/** Once the metal is in there is nothing left to hold; until the outcome is told, a cold shell is still worth a look. */
function lightenPast(finding: Finding, piece: Piece): Finding {
  if (!isPastPour(piece)) return finding;
  if (finding.rule === "poured-cold-shell" && piece.outcome === null) return finding;
  return finding.level === "note" ? finding : { ...finding, level: "note" };
}
