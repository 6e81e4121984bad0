import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import { clockTime } from "../../base/format/time.ts";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";

/** When a full shell is frozen through, as far as that is known. */
export function frozenWords({ frozenAt, from }: KnockoutTimes, now: number, locale: string): string {
  if (frozenAt === null) return "When it is frozen through is not known: none of its sections was measured.";
  const at = clockTime(frozenAt, locale);
  if (from === "at-least") return `Its thinnest section is frozen about ${at}, thicker ones well after it.`;
  if (from === "mean") return `Its mean section is frozen about ${at}, a thick place well after it.`;
  return frozenAt <= now
    ? "Frozen through by the estimate."
    : `Frozen through about ${at}: don’t move it before.`;
}

/** Where the moment comes from. */
export const outSource: Readonly<Record<KnockoutTimes["from"], string>> = {
  usual: `Usual for small bronzes, ${usualKnockoutMin.value} min (${usualKnockoutMin.source}).`,
  "at-least": `By the thinnest section, and not before the usual ${usualKnockoutMin.value} min (${usualKnockoutMin.source}). A thick place takes longer.`,
  mean: `By its mean section, volume over area, and not before the usual ${usualKnockoutMin.value} min (${usualKnockoutMin.source}). A thick place takes longer.`,
  reckoned:
    "Estimate: the core below its limit, and ten freezings at least. Recesses and crowded branches take up to twice as long.",
};
