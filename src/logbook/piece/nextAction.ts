import type { MetalBar } from "../fire/metalReady.ts";
import type { Run } from "../fire/fireStates.ts";
import type { CrackState } from "./crackStates.ts";
import { openCracks } from "./crackStates.ts";
import { patternState } from "./patternState.ts";
import type { Phase, Piece, Recipe } from "./piece.ts";
import type { NextAction } from "./action.ts";
import type { CoverAnswer, FireAnswer, Standing } from "./standing.ts";

/**
 * The coat the recipe wants next: the step after the furthest one dipped, over what was skipped. A step that was
 * passed over is not asked for again, so a struck prime never comes up under seven backups.
 */
export function nextCoat({ coats, skipped }: Piece, recipe: Recipe | null): Standing["next"] {
  const left = new Set(skipped.map(({ step }) => step));
  let step = coats.reduce((furthest, coat) => Math.max(furthest, coat.step ?? -1), -1) + 1;
  while (left.has(step)) step += 1;
  const wanted = recipe?.coats[step];
  return wanted === undefined ? null : { ...wanted, step, number: coats.length + 1 };
}

type From = {
  readonly piece: Piece;
  readonly recipe: Recipe | null;
  readonly next: Standing["next"];
  readonly cover: CoverAnswer | null;
  readonly forFire: FireAnswer | null;
  readonly bars: readonly MetalBar[];
  readonly cracks: readonly CrackState[];
  /** The firing or preheat it stands in. */
  readonly kiln: Run | null;
};

/** The one thing to do next. It proposes; the log takes whatever was done. */
export function nextAction({ piece, recipe, next, cover, forFire, bars, cracks, kiln }: From): NextAction {
  if (kiln !== null && waitsForFire.includes(piece.phase))
    return { kind: "in-kiln", runId: kiln.id, since: kiln.startedAt };
  const hasResidue = bars.some(({ code }) => code === "residue");
  switch (piece.phase) {
    case "coating":
      if (openCracks(cracks).length > 0) return { kind: "mend" };
      if (next !== null || recipe === null || wantsCover(piece)) return dipNext(cover);
      return forFire === null || forFire.state === "dry"
        ? { kind: "review" }
        : { kind: "final-dry", at: forFire.dryAt };
    case "reviewed":
      return patternOut(piece) ?? { kind: "fire" };
    case "dewaxed":
      return { kind: "burn-out" };
    case "burnout":
      return { kind: "end-burnout" };
    case "burnt-out":
      return { kind: "fire" };
    case "fired":
      return hasResidue ? { kind: "fire" } : { kind: "preheat" };
    case "preheated":
      if (hasResidue) return { kind: "fire" };
      if (bars.some(({ code }) => code === "rinsed" || code === "cold")) return { kind: "preheat" };
      return bars.length === 0 ? { kind: "pour" } : (patternOut(piece) ?? { kind: "fire" });
    case "poured":
      return { kind: piece.outcome?.result === "lost" ? "none" : "knock-out" };
    case "knocked-out":
      if (piece.outcome === null) return { kind: "tell-outcome" };
      return { kind: piece.outcome.result === "lost" ? "none" : "finish" };
    case "finished":
      return { kind: piece.outcome === null ? "tell-outcome" : "none" };
    case "scrapped":
      return { kind: "none" };
  }
}

/** Coated and not poured: what a kiln that is lit may be holding. */
const waitsForFire: readonly Phase[] = ["reviewed", "dewaxed", "burnt-out", "fired", "preheated"];

/** How what is left of the pattern gets out: wax by a dewax, a film or anything else by burning. Null once it is out. */
function patternOut(piece: Piece): NextAction | null {
  const state = patternState(piece);
  if (state === "gone") return null;
  return { kind: state === "inside" && piece.plan.material === "wax" ? "dewax" : "burn-out" };
}

/** By the answer whether it may be covered; before its check time the coat dries, whatever a clock of the air says. */
function dipNext(cover: CoverAnswer | null): NextAction {
  if (cover === null) return { kind: "dip", readiness: "ready", at: null };
  switch (cover.state) {
    case "dry":
      return { kind: "dip", readiness: "ready", at: cover.dryAt };
    case "check":
      return { kind: "dip", readiness: "maybe", at: cover.checkAt };
    case "drying":
      return { kind: "dip", readiness: "drying", at: cover.checkAt };
    case "unknown":
      return { kind: "dip", readiness: "unknown", at: null };
  }
}

/** A crack mended after fire wants a coat over the patch before the shell is judged again. */
function wantsCover({ cracks, coats }: Piece): boolean {
  const lastDip = coats.at(-1)?.dippedAt ?? -Infinity;
  return cracks.some(({ afterBurnout, patched }) => afterBurnout && patched !== null && patched.at > lastDip);
}
