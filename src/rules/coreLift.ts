import { coreStanding } from "../logbook/piece/coreStanding.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { coatsAreDone, isPastPour } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/** A core that pins and neck can't hold against its lift in the metal, or of which nobody said what holds it. */
export function coreLift(standing: Standing): readonly FindingOf<"core-lift">[] {
  const { piece, shop } = standing;
  const core = coreStanding(piece.plan, shop);
  if (core === null || isPastPour(piece) || core.verdict === "holds") return [];
  const floats = core.verdict === "floats";
  return [
    {
      rule: "core-lift",
      variant: floats ? "floats" : "not-known",
      // Pins can be set as long as the pattern is bare; afterwards it is time to know.
      level: floats ? "hold" : coatsAreDone(standing) ? "watch" : "note",
      figures: {
        litre: figure(core.litre, "litre"),
        liftN: figure(core.liftN, "N"),
        holdN: figure(core.holdN, "N"),
        needN: figure(core.needN, "N"),
      },
      texts: {},
      entries: [],
      source:
        "lift: Archimedes; steel pins when hot: EN 1993-1-2, table 3.1; strength of the core and the limit: judgement",
    },
  ];
}
