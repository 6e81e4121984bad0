import type { PourCame } from "../entries/shellFireBodies.ts";
import { cameOf } from "../piece/pourCame.ts";
import type { Piece } from "../piece/piece.ts";

export type ShellStage = "waiting" | "out" | "pouring" | "poured";

/** How far one shell has come in one pour. */
export type ShellCourse = {
  readonly pieceId: string;
  readonly name: string;
  readonly stage: ShellStage;
  readonly out: { readonly id: string; readonly at: number; readonly shellC: number | null } | null;
  readonly begun: { readonly id: string; readonly at: number; readonly metalC: number | null } | null;
  readonly poured: Piece["pours"][number] | null;
  /** How it came to its end; null until it has its metal. */
  readonly came: PourCame | null;
  readonly knockedOut: boolean;
};

/** What the piece's own log says of this pour. */
export function shellCourse(piece: Piece, pourId: string): ShellCourse {
  const isHere = (one: { readonly pourId?: string | null | undefined }): boolean => one.pourId === pourId;
  const out = piece.outOfKiln.findLast(isHere) ?? null;
  const begun = piece.pourBegun.findLast(isHere) ?? null;
  const poured = piece.pours.findLast(isHere) ?? null;
  return {
    pieceId: piece.id,
    name: piece.plan.name,
    stage: poured !== null ? "poured" : begun !== null ? "pouring" : out !== null ? "out" : "waiting",
    out,
    begun,
    poured,
    came: poured === null ? null : cameOf(poured),
    knockedOut: piece.phase === "knocked-out" || piece.phase === "finished",
  };
}

/** The shell whose turn it is: one that is under way, else the first that waits; null when all have their metal. */
export function turnOf(courses: readonly ShellCourse[]): ShellCourse | null {
  return (
    courses.find(({ stage }) => stage === "out" || stage === "pouring") ??
    courses.find(({ stage }) => stage === "waiting") ??
    null
  );
}

/** The newest mark of the pour, which can be taken back until the next; null before the first. */
export function lastMark(
  courses: readonly ShellCourse[],
): { readonly pieceId: string; readonly entryId: string; readonly at: number } | null {
  const marks = courses.flatMap(({ pieceId, out, begun, poured }) =>
    [out, begun, poured].flatMap((mark) =>
      mark === null ? [] : [{ pieceId, entryId: mark.id, at: mark.at }],
    ),
  );
  return marks.reduce<(typeof marks)[number] | null>(
    (newest, mark) => (newest === null || mark.at >= newest.at ? mark : newest),
    null,
  );
}
