import type { Standing } from "../logbook/piece/standing.ts";
import type { FindingOf } from "./variants.ts";

/** A crack found after a burnout and patched, with no wire round it. Wire holds a cracked shell together; it adds no strength. */
export function patchedWithoutWire({ piece }: Standing): readonly FindingOf<"patched-without-wire">[] {
  return piece.cracks.flatMap((crack) => {
    if (!crack.afterBurnout || crack.patched === null) return [];
    if (piece.wires.some(({ at }) => at >= crack.at)) return [];
    return [
      {
        rule: "patched-without-wire",
        variant: "no-wire",
        level: "note",
        figures: {},
        texts: { where: crack.where },
        entries: [crack.id, crack.patched.id],
        source: "common practice, no source; hot strength of wire from memory of EN 1993-1-2 table 3.1",
      },
    ];
  });
}
