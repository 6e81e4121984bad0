import type { NextAction } from "./action.ts";
import type { Standing } from "./standing.ts";

/**
 * Hands first: metal that can't wait, coats that can go on, what else a person can do now; then what only time does. A
 * piece held back from its next coat waits with those that dry.
 */
function rankOf(action: NextAction, isHeld: boolean): number {
  if (action.kind === "dip" && isHeld) return 12;
  switch (action.kind) {
    case "pour":
      return 0;
    case "dip":
      return { ready: 1, maybe: 2, drying: 12, unknown: 13 }[action.readiness];
    case "mend":
      return 3;
    case "review":
      return 4;
    case "dewax":
    case "burn-out":
      return 5;
    case "fire":
      return 6;
    case "preheat":
      return 7;
    case "end-burnout":
    case "in-kiln":
      return 8;
    case "knock-out":
      return 9;
    case "tell-outcome":
      return 10;
    case "finish":
      return 11;
    case "final-dry":
      return 12;
    case "none":
      return 14;
  }
}

const timeOf = (action: NextAction): number => ("at" in action ? (action.at ?? Infinity) : Infinity);

/** Order of the rack: what needs hands next comes first; in a rank the earliest time, then the oldest piece. */
export function rackOrder(
  a: Standing,
  b: Standing,
  isHeld: (standing: Standing) => boolean = () => false,
): number {
  const rank = rankOf(a.action, isHeld(a)) - rankOf(b.action, isHeld(b));
  if (rank !== 0) return rank;
  const [timeA, timeB] = [timeOf(a.action), timeOf(b.action)];
  if (timeA !== timeB) return timeA < timeB ? -1 : 1;
  const started = a.piece.startedAt - b.piece.startedAt;
  return started !== 0 ? started : a.piece.id < b.piece.id ? -1 : a.piece.id > b.piece.id ? 1 : 0;
}
