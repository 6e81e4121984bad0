import type { Standing } from "../logbook/piece/standing.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"burnout-residue">;

/** Carbon or ash was seen in the shell, and nothing since says that it is gone. */
export function burnoutResidue({ metalBars }: Standing): readonly Found[] {
  return metalBars.flatMap(({ code, entries }): readonly Found[] =>
    code === "residue"
      ? [
          {
            rule: "burnout-residue",
            variant: "residue",
            level: "hold",
            figures: {},
            texts: {},
            entries,
            source:
              "common practice, no source: carbon under metal makes gas, ash stays in the casting's face",
          },
        ]
      : [],
  );
}
