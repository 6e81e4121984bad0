import type { PourCame } from "../entries/shellFireBodies.ts";
import type { Piece } from "./piece.ts";

/** How one pour came to its end. A log that does not say meant a full shell. */
export const cameOf = ({ came }: Pick<Piece["pours"][number], "came">): PourCame => came ?? "full";

/** How a piece's last pour came to its end; null before it was poured. */
export function lastCame({ pours }: Pick<Piece, "pours">): PourCame | null {
  const last = pours.at(-1);
  return last === undefined ? null : cameOf(last);
}

/** What such a pour makes likely of the casting, in the words the result is kept in; judgement. */
const likely: Readonly<Record<Exclude<PourCame, "full">, OutcomeStart>> = {
  short: { result: "flawed", defects: ["misrun"] },
  leaked: { result: "flawed", defects: ["run-out"] },
  frozen: { result: "lost", defects: ["misrun"] },
  stopped: { result: "flawed", defects: ["misrun"] },
};

export type OutcomeStart = {
  readonly result: "flawed" | "lost";
  readonly defects: readonly string[];
};

/** Where the question how a casting came out starts after a pour that did not fill its shell; null after a full one. */
export function outcomeStart(piece: Pick<Piece, "pours">): OutcomeStart | null {
  const came = lastCame(piece);
  return came === null || came === "full" ? null : likely[came];
}
