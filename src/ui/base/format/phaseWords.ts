import type { Phase, Piece } from "../../../logbook/piece/piece.ts";
import { lastCame } from "../../../logbook/piece/pourCame.ts";
import { pouredWords } from "./pourCameWords.ts";

export const phaseWords: Record<Phase, string> = {
  coating: "being coated",
  reviewed: "reviewed, ready for burnout",
  dewaxed: "dewaxed, ready for burnout",
  burnout: "in burnout",
  "burnt-out": "burnt out",
  fired: "fired",
  preheated: "preheated",
  poured: "poured",
  "knocked-out": "knocked out",
  finished: "finished",
  scrapped: "scrapped",
};

/** Where a piece has got to: of a poured one, how the pour went. */
export function pieceWords(piece: Pick<Piece, "phase" | "pours">): string {
  const came = lastCame(piece);
  return piece.phase === "poured" && came !== null ? pouredWords[came] : phaseWords[piece.phase];
}

/** How a piece ended: its result, and before it a pour that did not fill the shell. */
export function endWords(piece: Pick<Piece, "phase" | "pours" | "outcome">): string {
  if (piece.outcome === null) return pieceWords(piece);
  const came = lastCame(piece);
  const result = `came out ${piece.outcome.result}`;
  return came === null || came === "full" ? result : `${pouredWords[came]}, ${result}`;
}
