import { sentence } from "../../base/format/sentence.ts";
import type { NoTime } from "../../../logbook/planning/coatTimes.ts";
import type { DayVerdict } from "../../../logbook/planning/dayVerdict.ts";
import type { FireAhead } from "../../../logbook/planning/fireAhead.ts";
import type { Stop } from "../../../logbook/planning/pieceAhead.ts";
import type { WhyLeft } from "../../../logbook/planning/pourProposal.ts";
import { dayTime, duration } from "../../base/format/time.ts";
import { noReadyWords } from "../../base/format/readyWords.ts";
import type { Format } from "../../base/format/units.ts";
import { scheduleRefusalText } from "../../fire/run/scheduleWords.ts";

type Say = {
  readonly format: Format;
  readonly now: number;
  readonly alloyNamed: (id: string) => string;
  readonly furnaceNamed: (id: string) => string;
};

const runNames = { burnout: "burnout", firing: "firing", preheat: "preheat" } as const;

/** "burnout", "firing", "preheat": a run by its purpose, in a sentence. */
export const runWord = (purpose: keyof typeof runNames): string => runNames[purpose];

/** Why a piece doesn't go on the day, with its numbers: one or two sentences. */
export function whyLeftText(why: WhyLeft, say: Say): string {
  const { format, alloyNamed, furnaceNamed } = say;
  const kg = (value: number): string => format.show("kg", value);
  const heat = (lowC: number, highC: number): string =>
    `${format.show("temp", lowC)} to ${format.show("temp", highC)}`;
  switch (why.code) {
    case "stopped":
      return stopText(why.stop);
    case "no-alloy":
      return "No alloy is set.";
    case "no-metal":
      return "Its metal mass is not set.";
    case "no-fire":
      return fireText(why.fire, format);
    case "too-late":
      return `${duration(why.verdict.lateMs)} too late even at the likely times.`;
    case "with-others":
      return `Alone it is in time. With the others in the kiln its runs take ${duration(why.minutes * 60_000)}, and it is ${duration(why.lateMs)} too late.`;
    case "in-other-pour":
      return "It is in another planned pour.";
    case "too-much-metal":
      return `It needs ${kg(why.needsKg)} molten; the largest crucible takes ${kg(why.mostKg)}.`;
    case "crucible-full":
      return `It needs ${kg(why.needsKg)} more molten; ${furnaceNamed(why.crucibleId)} has ${kg(why.leftKg)} left.`;
    case "other-alloy":
      return `One melt, one alloy. That day every large enough crucible melts ${listed(why.alloyIds.map(alloyNamed))}.`;
    case "kiln-heat":
      return `Its shell should be at ${heat(why.lowC, why.highC)}, the others in the kiln at ${heat(why.kilnLowC, why.kilnHighC)}.`;
    case "kiln-full":
      return `It takes ${format.show("kilnL", why.litre)} of the kiln; ${format.show("kilnL", why.leftL)} are left.`;
  }
}

/** The first day on which a piece could go, where that is known and later than the one asked for. */
export function nextDayText(
  verdict: DayVerdict | null,
  { format, now }: Pick<Say, "format" | "now">,
): string {
  return verdict?.is === "too-late"
    ? `First possible pour time: ${dayTime(verdict.soonestAt, now, format.locale)}.`
    : "";
}

function stopText(stop: Stop): string {
  switch (stop.code) {
    case "crack":
      return "It has an open crack: repair it first.";
    case "cover-patch":
      return "Its repair needs a coat over it first.";
    case "wet-patch":
      return "Its repair is not yet dry. Log “Repair is dry” once it is.";
    case "held":
      return "Hold: no further coat yet. See its page for the reason.";
    case "no-recipe":
      return "It has no recipe, so the coats to come are not known.";
    case "in-kiln":
      return "It is in a kiln run whose end is not known.";
    case "no-time":
      return noTimeText(stop.why);
  }
}

function noTimeText(why: NoTime): string {
  switch (why) {
    case "damp-air":
      return "No time can be given: the room’s air stays too damp for the last drying.";
    case "after-the-hours":
      return "Its coats go on later than this forecast reaches.";
    case "not-known":
      return "No time can be given for its drying.";
    case "no-readings":
    case "air-too-damp":
    case "condensing":
    case "frost":
    case "beyond-forecast":
    case "before-log":
      return `${sentence(noReadyWords(why))}.`;
  }
}

/** What a run's plan still asks for, or why it refuses. */
export function fireText(fire: Extract<FireAhead, { ok: false }>, format: Format): string {
  if ("refused" in fire) {
    const { title, says } = scheduleRefusalText(fire.refused, format);
    return `No ${runWord(fire.purpose)} can be planned. ${title}. ${says}`;
  }
  const lacks = listed(fire.gaps.map((gap) => gapNames[gap]));
  const from = fire.gaps.includes("pattern-mass")
    ? " Weigh it before the first coat, or enter the metal as a volume."
    : "";
  return `Its ${runWord(fire.purpose)} can’t be planned: ${lacks} not known.${from}`;
}

const gapNames = {
  pieces: "pieces",
  kiln: "kiln",
  material: "pattern material",
  "materials-differ": "one material for all patterns",
  "pattern-mass": "mass of the pattern",
  wall: "shell thickness",
  "shell-mass": "mass of the shell",
} as const;

/** "a", "a and b", "a, b and c". */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
