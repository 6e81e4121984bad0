import type { Phase, Piece } from "../../../logbook/piece/piece.ts";
import { lastCame } from "../../../logbook/piece/pourCame.ts";
import { pouredWords } from "./pourCameWords.ts";
import { endTexts as t, phaseTexts } from "../words/phases.ts";

export const phaseWords: Record<Phase, string> = phaseTexts;

/** Where a piece has got to: of a poured one, how the pour went. */
export function pieceWords(piece: Pick<Piece, "phase" | "pours">): string {
  const came = lastCame(piece);
  return piece.phase === "poured" && came !== null ? pouredWords[came] : phaseWords[piece.phase];
}

/** How a piece ended: its result, and before it a pour that did not fill the shell. */
export function endWords(piece: Pick<Piece, "phase" | "pours" | "outcome">): string {
  if (piece.outcome === null) return pieceWords(piece);
  const came = lastCame(piece);
  const result = t["end.cameOutResult"]({ result: piece.outcome.result });
  return came === null || came === "full" ? result : `${pouredWords[came]}, ${result}`;
}
