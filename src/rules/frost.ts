import type { CoatDrying, Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import type { FindingOf } from "./variants.ts";

const source = "common practice, no source: frost destroys a silica sol";

/**
 * A coat whose wet surface fell below 1 °C, where a silica sol freezes. A hold while the shell may still be stripped
 * or recoated, to be watched once the fire has closed that, a note when the metal is in. A frost that is only to come
 * holds too: there is still time to move the piece.
 */
export function frost(standing: Standing): readonly FindingOf<"frost">[] {
  return standing.drying.flatMap((drying): readonly FindingOf<"frost">[] => {
    const { frozen, coat } = drying;
    if (frozen === null) return [];
    const isToCome = frozen.at > standing.now;
    return [
      {
        rule: "frost",
        variant: isToCome ? "will-freeze" : "froze",
        level: isToCome ? "hold" : levelOf(standing, drying),
        figures: {
          coat: figure(coat.number, "count"),
          surfaceC: figure(frozen.surfaceC, "C"),
          at: figure(frozen.at, "epoch-ms"),
        },
        texts: {},
        entries: [coat.id],
        source,
      },
    ];
  });
}

function levelOf({ piece }: Standing, { coat }: CoatDrying): FindingOf<"frost">["level"] {
  if (piece.pours.length > 0) return "note";
  return piece.firings.some(({ at }) => at > coat.dippedAt) ? "watch" : "hold";
}
