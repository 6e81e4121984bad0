import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import { clockTime } from "../../base/format/time.ts";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";

/** When a full shell is frozen through, as far as that is known. */
export function frozenWords({ frozenAt, from }: KnockoutTimes, now: number, locale: string): string {
  if (frozenAt === null) return "Freezing time not known: no section was measured.";
  const at = clockTime(frozenAt, locale);
  if (from === "at-least") return `Its thinnest section is frozen about ${at}, thicker ones much later.`;
  if (from === "mean") return `Its mean section is frozen about ${at}, a thick place much later.`;
  return frozenAt <= now ? "Frozen through, estimated." : `Frozen through about ${at}: don’t move it before.`;
}

/** Where the moment comes from. */
export const outSource: Readonly<Record<KnockoutTimes["from"], string>> = {
  usual: `Usual for small bronzes: ${usualKnockoutMin.value} min.`,
  "at-least": `From the thinnest section, and at least the usual ${usualKnockoutMin.value} min. A thick place takes longer.`,
  mean: `From its mean section, and at least the usual ${usualKnockoutMin.value} min. A thick place takes longer.`,
  reckoned:
    "Estimate: core below its limit, and at least ten times the freezing time. Recesses and crowded branches take up to twice as long.",
};
