import type { Piece } from "../../logbook/piece.ts";
import type { RackItem } from "../app/live.ts";
import { actionWords, type Turn } from "../format/actionWords.ts";

export type RackFilter = "all" | Exclude<Turn, "rest">;

export const turnOf = ({ standing }: RackItem): Turn => actionWords(standing, standing.now, "en").turn;

/** The pieces whose turn it is and whose name, alloy or note holds every word searched for. */
export function rackFilter(
  items: readonly RackItem[],
  { filter, search }: { readonly filter: RackFilter; readonly search: string },
): readonly RackItem[] {
  return items.filter(
    (item) => (filter === "all" || turnOf(item) === filter) && isNamed(item.standing.piece, search),
  );
}

/** Whether a piece's name, alloy or note holds every word searched for. */
export function isNamed({ plan }: Piece, search: string): boolean {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const text = [plan.name, plan.alloyId ?? "", plan.note ?? ""].join(" ").toLowerCase();
  return words.every((word) => text.includes(word));
}

/** Pieces whose coat came to ready after the due times were last looked at, the first to come first. */
export function cameDue(
  items: readonly RackItem[],
  { since, now }: { readonly since: number; readonly now: number },
) {
  return items
    .flatMap((item) => {
      const at = item.standing.outer?.readyAt.likely ?? null;
      const waits = item.standing.action.kind === "dip" || item.standing.action.kind === "review";
      return waits && at !== null && at > since && at <= now ? [{ item, at }] : [];
    })
    .toSorted((a, b) => a.at - b.at);
}
