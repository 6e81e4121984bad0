import type { Standing } from "../logbook/piece/standing.ts";
import { practice } from "../trade/practice.ts";
import { figure } from "./finding.ts";
import { wettedAt } from "../logbook/drying/dryMinimum.ts";
import { hoursBetween, primeStretches } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/** A prime coat that hung bare for longer than a day; once covered it is only told. */
export function primeLeftBare(standing: Standing): readonly FindingOf<"prime-left-bare">[] {
  const { value: limitH, source } = practice.primeBareH;
  return primeStretches(standing).flatMap((stretch) => {
    const bareH = hoursBetween(wettedAt(stretch.coat), stretch.to);
    if (bareH <= limitH) return [];
    return [
      {
        rule: "prime-left-bare",
        variant: stretch.isOuter ? "bare" : "was-bare",
        level: stretch.isOuter ? "watch" : "note",
        figures: {
          coat: figure(stretch.coat.number, "count"),
          bareH: figure(bareH, "h"),
          limitH: figure(limitH, "h"),
        },
        texts: {},
        entries: [stretch.coat.id],
        source,
        ...(stretch.isOuter ? {} : { past: true }),
      },
    ];
  });
}
