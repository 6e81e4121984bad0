import type { Standing } from "../logbook/piece/standing.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"pattern-inside">;

const source = "common practice, no source: metal on a pattern or a film of wax throws";

/** A shell heated or carried out for metal with its pattern, or the film a dewax leaves, still in it. */
export function patternInside({ piece, metalBars }: Standing): readonly Found[] {
  const isForMetal = piece.phase === "preheated" || piece.outOfKiln.length > 0 || piece.pourBegun.length > 0;
  if (!isForMetal) return [];
  return metalBars.flatMap(({ code, entries }): readonly Found[] => {
    const variant = code === "pattern-inside" ? "inside" : code === "wax-film" ? "film" : null;
    const found = piece.preheats.at(-1)?.id ?? piece.outOfKiln.at(-1)?.id ?? piece.pourBegun.at(-1)?.id;
    if (variant === null) return [];
    const of = { rule: "pattern-inside", variant, level: "hold", figures: {}, texts: {}, source } as const;
    return [{ ...of, entries: [...entries, ...(found === undefined ? [] : [found])] }];
  });
}
