import type { Phase } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { firingPractice } from "../physics/heat/firingLimits.ts";
import { figure } from "./finding.ts";
import { hoursBetween } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"shell-damp-again">;

/** Before these a coat is still to dry or a fire to come; after them the metal is in. */
const waitsForMetal: readonly Phase[] = ["burnt-out", "fired", "preheated"];

/** A fired shell that was rinsed, or stood cold, has water in it again until heat drives it out. */
export function shellDampAgain({ piece, metalBars, now }: Standing): readonly Found[] {
  if (!waitsForMetal.includes(piece.phase)) return [];
  const { steamHoldC, steamToC, patchedHoldMin } = firingPractice;
  return metalBars.flatMap(({ code, entries, at }): readonly Found[] =>
    code === "rinsed" || code === "cold"
      ? [
          {
            rule: "shell-damp-again",
            variant: code,
            level: "hold",
            figures: {
              ageH: figure(at === null ? null : hoursBetween(at, now), "h"),
              fromC: figure(steamHoldC, "C"),
              toC: figure(steamToC, "C"),
              holdMin: figure(patchedHoldMin, "min"),
            },
            texts: {},
            entries,
            source: "common practice, no source; a porous shell takes up water from a rinse and from the air",
          },
        ]
      : [],
  );
}
