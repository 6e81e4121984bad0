import type { Piece } from "../logbook/piece/piece.ts";
import type { RuleId } from "./finding.ts";
import { isBeforeFire, isPastPour } from "./stage.ts";

type Until = "fire" | "metal" | "outcome";

/**
 * How long each rule has something to say: as long as something can still be done about it. What is found in the
 * coats ends when the fire begins, what bears on the metal ends when it is in, and how the shell was at the pour ends
 * with the result.
 */
const until: Readonly<Record<RuleId, Until>> = {
  "air-too-damp": "fire",
  "air-reading-old": "fire",
  "prime-temperature-moved": "fire",
  "prime-drying-hard": "fire",
  "prime-left-bare": "fire",
  "stucco-out-of-order": "fire",
  "dipped-from-unfit-bucket": "fire",
  frost: "metal",
  "recoated-before-dry": "metal",
  "wall-too-thin": "metal",
  "cannot-judge-wall": "metal",
  "recipe-not-followed": "metal",
  "no-seal-coat": "metal",
  "last-coat-damp": "metal",
  "open-crack": "metal",
  "core-lift": "metal",
  "pattern-inside": "metal",
  "burnout-residue": "metal",
  "shell-damp-again": "metal",
  "patched-without-wire": "metal",
  "fired-too-little": "metal",
  "run-broke-a-limit": "metal",
  "poured-cold-shell": "outcome",
};

export function stillSpeaks(rule: RuleId, piece: Piece): boolean {
  switch (until[rule]) {
    case "fire":
      return isBeforeFire(piece);
    case "metal":
      return !isPastPour(piece);
    case "outcome":
      return piece.outcome === null && piece.phase !== "scrapped";
  }
}
