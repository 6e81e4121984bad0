import { sentence } from "../../base/format/sentence.ts";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { GoStanding, LapseReason, PlanPart } from "../../../rules/pourGo.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { atTime, clockTime, soonTime } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";
import { lineName, lower, whyText } from "./sheetWords.ts";

type Say = { readonly format: Format; readonly now: number };

const parts: Readonly<Record<PlanPart, string>> = {
  "pour-time": "the pour time moved",
  pieces: "the shells of this pour changed",
  metal: "the metal changed",
  "metal-heat": "the planned metal temperature changed",
  "shell-heat": "the planned shell temperature changed",
};

/** One reason why a go lapsed, to follow a colon. */
function lapseText(reason: LapseReason, known: GoStanding["known"], say: Say): string {
  switch (reason.kind) {
    case "plan-moved":
      return parts[reason.part];
    case "stop-warning":
      return `${reason.name}: ${lower(findingText(reason.finding, say.format).title)}`;
    case "line": {
      const [first] = reason.why;
      const name = lower(lineName(reason.item));
      return first === undefined ? name : `${name}: ${lower(whyText(first, known, say))}`;
    }
    case "tick-withdrawn":
      return `tick taken back: ${lower(lineName(reason.item))}`;
    case "too-early":
      return `it was given before ${soonTime(reason.opensAt, say.now, say.format.locale)}`;
    case "too-long-ago":
      return `given ${reason.minutes} min ago`;
    case "pour-late":
      return `${reason.minutes} min past the planned pour`;
  }
}

export const lapseTexts = (
  because: readonly LapseReason[],
  known: GoStanding["known"],
  say: Say,
): readonly string[] => because.map((reason) => lapseText(reason, known, say));

/** Where the go stands, in one line. */
export function goText(go: GoStanding, say: Say): string {
  const { locale } = say.format;
  const when = (ms: number): string => soonTime(ms, say.now, locale);
  const by = go.decided?.name ?? "";
  switch (go.state) {
    case "not-open":
      return say.now < go.opensAt
        ? `Go opens ${atTime(go.opensAt, say.now, locale)}.`
        : `The planned pour is more than ${Math.round((go.closesAt - go.known.pour.plan.pourAt) / minuteMs)} min past. Move the plan first.`;
    case "none":
      return "No go given yet.";
    case "open":
      return "All OK. No go given yet.";
    case "go":
      return `Go given by ${by} ${when(go.since ?? say.now)}${go.holdsUntil === null ? "" : `, holds until ${clockTime(go.holdsUntil, locale)}`}.`;
    case "lapsed": {
      const [first = "", ...rest] = lapseTexts(go.lapsedBecause, go.known, say);
      const more = rest.length === 0 ? "" : ` and ${rest.length} more`;
      return `Go lapsed ${when(go.since ?? say.now)}. ${sentence(first)}${more}. Check again.`;
    }
    case "no-go":
      return `No-go by ${by} ${when(go.since ?? say.now)}.`;
    case "under-way":
      return go.wasGo ? `Go given by ${by}.` : "Started without a go.";
  }
}
