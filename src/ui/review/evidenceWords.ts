import type { CoatDrying, NoReadyReason } from "../../logbook/standing.ts";
import { dayTime } from "../format/time.ts";
import type { Format } from "../format/units.ts";

const notKnown: Record<NoReadyReason, string> = {
  "no-readings": "not known: no reading of the room's air",
  "air-too-damp": "not known: the air was too damp to count on",
  condensing: "not known: water was condensing",
  "beyond-forecast": "not known",
};

/** What speaks for a coat's dryness: a hand or a scale before any sum, the sum before nothing. */
export function evidenceWords(
  { evidence, leftShare, verdict, reason, basis, condensed }: CoatDrying,
  {
    format,
    now,
    covered,
    accepted,
  }: {
    readonly format: Format;
    readonly now: number;
    /** Number of the coat over it; null for the outermost. */
    readonly covered: number | null;
    /** The maker was told it was damp, and went on. */
    readonly accepted: boolean;
  },
): string {
  const when = covered === null ? "now" : `when coat ${covered} went on`;
  const knowingly = accepted ? "; known with the tap" : "";
  if (evidence !== null) {
    const { seen } = evidence;
    const found = { touch: "to the touch", weight: "by weight", surface: "by surface temperature" }[
      seen.method
    ];
    return `${evidence.says} ${found}, ${dayTime(seen.at, now, format.locale)}${knowingly}`;
  }
  if (leftShare === null || verdict === "unknown")
    return `${reason === null ? "not known" : notKnown[reason]}${knowingly}`;
  const rests = basis.readings === 1 ? "1 air reading" : `${basis.readings} air readings`;
  const wet = condensed ? ", water condensed on it" : "";
  if (verdict === "dry") return `reckoned dry ${when} (${rests})${wet}`;
  const left =
    leftShare < 0.01 ? "perhaps not quite dry" : `${format.show("percent", leftShare)} of its water left`;
  return `reckoned: ${left} ${when} (${rests})${wet}${knowingly}`;
}
