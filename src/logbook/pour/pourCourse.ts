import type { Piece } from "../piece/piece.ts";

export type ShellStage = "waiting" | "out" | "pouring" | "full";

/** How far one shell has come in one pour. */
export type ShellCourse = {
  readonly pieceId: string;
  readonly name: string;
  readonly stage: ShellStage;
  readonly out: { readonly id: string; readonly at: number; readonly shellC: number | null } | null;
  readonly begun: { readonly id: string; readonly at: number; readonly metalC: number | null } | null;
  readonly full: Piece["pours"][number] | null;
  readonly knockedOut: boolean;
};

/** What the piece's own log says of this pour. */
export function shellCourse(piece: Piece, pourId: string): ShellCourse {
  const isHere = (one: { readonly pourId?: string | null | undefined }): boolean => one.pourId === pourId;
  const out = piece.outOfKiln.findLast(isHere) ?? null;
  const begun = piece.pourBegun.findLast(isHere) ?? null;
  const full = piece.pours.findLast(isHere) ?? null;
  return {
    pieceId: piece.id,
    name: piece.plan.name,
    stage: full !== null ? "full" : begun !== null ? "pouring" : out !== null ? "out" : "waiting",
    out,
    begun,
    full,
    knockedOut: piece.phase === "knocked-out" || piece.phase === "finished",
  };
}

/** The shell whose turn it is: one that is under way, else the first that waits; null when all are full. */
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
  const marks = courses.flatMap(({ pieceId, out, begun, full }) =>
    [out, begun, full].flatMap((mark) => (mark === null ? [] : [{ pieceId, entryId: mark.id, at: mark.at }])),
  );
  return marks.reduce<(typeof marks)[number] | null>(
    (newest, mark) => (newest === null || mark.at >= newest.at ? mark : newest),
    null,
  );
}
