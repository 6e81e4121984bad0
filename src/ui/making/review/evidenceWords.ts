import type { DrynessSeen } from "../../../logbook/piece/piece.ts";
import type { CoatDrying, NoReadyReason } from "../../../logbook/piece/standing.ts";
import { dayTime } from "../../base/format/time.ts";
import { saidThenWords } from "../../base/format/saidThenWords.ts";
import type { Format } from "../../base/format/units.ts";

const notKnown: Record<NoReadyReason, string> = {
  "no-readings": "not known: room air not logged",
  "air-too-damp": "not known: the air was too damp",
  condensing: "not known: water condensed on it",
  frost: "not known: it may have frozen while wet",
  "beyond-forecast": "not known",
  "before-log": "not judged: it hung before the log began",
};

const foundBy: Record<DrynessSeen["method"], string> = {
  touch: "to the touch",
  colour: "by its colour",
  weight: "by weight",
  surface: "by surface temperature",
  resistance: "by its resistance",
  bag: "by the bag",
};

type About = {
  readonly format: Format;
  readonly now: number;
  /** The maker saw that it was damp, and went on. */
  readonly accepted: boolean;
};

/**
 * What speaks for a coat's dryness at the moment it was covered, or now for the outermost: a hand or a scale before
 * any sum, the sum before nothing. Short, since a whole wall of them goes on one sheet.
 */
export function evidenceWords(drying: CoatDrying, about: About): string {
  const { said } = drying;
  const words = knownNow(drying, about);
  return said === undefined || said.anew === null
    ? words
    : `${words}. ${saidThenWords(said, about.now, about.format)}`;
}

function knownNow(
  { evidence, belief, leftShare, verdict, reason, basis, condensed }: CoatDrying,
  { format, now, accepted }: About,
): string {
  const knowingly = accepted ? ", accepted" : "";
  if (evidence !== null) {
    const { seen } = evidence;
    const found = `${evidence.says} ${foundBy[seen.method]}, ${dayTime(seen.at, now, format.locale)}`;
    // Found wet, and dried after that: every page counts it as dry.
    return evidence.says === "wet" && verdict === "dry" ? `estimated dry; ${found}` : `${found}${knowingly}`;
  }
  if (leftShare === null || verdict === "unknown")
    return `${reason === null ? "not known" : notKnown[reason]}${knowingly}`;
  const counted = basis.readings === 1 ? "1 reading" : `${basis.readings} readings`;
  const rests = !basis.assumed
    ? counted
    : basis.readings === 0
      ? "room not logged"
      : `${counted}, room partly not logged`;
  const wet = condensed ? ", water condensed on it" : "";
  const checks = belief?.heard.length ?? 0;
  const by = checks === 0 ? "estimated" : `estimated with ${checks === 1 ? "1 check" : `${checks} checks`}`;
  if (verdict === "dry") return `${by} dry (${rests})${wet}`;
  const left = leftShare < 0.005 ? "may be dry" : `${format.show("percent", leftShare)} of its water left`;
  return `${by}: ${left} (${rests})${wet}${knowingly}`;
}
