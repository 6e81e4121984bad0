import type { Piece, Recipe } from "./piece.ts";
import type { CoverAnswer, FireAnswer, NextAction, Standing } from "./standing.ts";

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
};

/** The one thing to do next. It proposes; the log takes whatever was done. */
export function nextAction({ piece, recipe, next, cover, forFire }: From): NextAction {
  const isOpen = piece.cracks.some(({ patched, trimmedOff }) => patched === null && trimmedOff !== true);
  switch (piece.phase) {
    case "coating":
      if (isOpen) return { kind: "mend" };
      if (next !== null || recipe === null || wantsCover(piece)) return dipNext(cover);
      return forFire === null || forFire.state === "dry"
        ? { kind: "review" }
        : { kind: "final-dry", at: forFire.dryAt };
    case "reviewed":
      return { kind: hasLostPattern(piece) ? "fire" : "burn-out" };
    case "burnout":
      return { kind: "end-burnout" };
    case "burnt-out":
      return { kind: "fire" };
    case "fired":
      return { kind: "preheat" };
    case "preheated":
      return { kind: "pour" };
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

function hasLostPattern({ burnouts, firings }: Piece): boolean {
  return firings.length > 0 || burnouts.some(({ ended }) => ended !== null && ended.result !== "stopped");
}
