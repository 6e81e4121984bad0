import type { Piece } from "../../../logbook/piece/piece.ts";
import type { RackItem } from "../../base/state/live.ts";
import { actionWords, type Turn } from "../../base/format/actionWords.ts";
import { duesOf } from "../due/duesOf.ts";

export type RackFilter = "all" | Exclude<Turn, "rest">;

export const rackTurn = (item: RackItem): Turn => actionWords(item, item.standing.now, "en").turn;

/** The pieces whose turn it is and whose name, alloy or note holds every word searched for. */
export function rackFilter(
  items: readonly RackItem[],
  { filter, search }: { readonly filter: RackFilter; readonly search: string },
): readonly RackItem[] {
  return items.filter(
    (item) => (filter === "all" || rackTurn(item) === filter) && isNamed(item.standing.piece, search),
  );
}

/** Whether a piece's name, alloy or note holds every word searched for. */
export function isNamed({ plan }: Piece, search: string): boolean {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const text = [plan.name, plan.alloyId ?? "", plan.note ?? ""].join(" ").toLowerCase();
  return words.every((word) => text.includes(word));
}

/** Pieces with a due time that came after the due times were last looked at, the first to come first. */
export function cameDue(
  items: readonly RackItem[],
  { since, now }: { readonly since: number; readonly now: number },
) {
  return items
    .flatMap((item) => {
      const [due] = duesOf([item]);
      return due !== undefined && due.dueMs > since && due.dueMs <= now ? [{ item, due }] : [];
    })
    .toSorted((a, b) => a.due.dueMs - b.due.dueMs);
}
