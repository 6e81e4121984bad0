import type { Refusal } from "../../../logbook/log/command.ts";
import { fieldWords } from "./fieldWords.ts";
import { phaseWords } from "./phaseWords.ts";
import { ago, dayTime } from "./time.ts";
import type { Format } from "./units.ts";

/** Why it was not logged, and what would be taken, as one or two sentences. */
export function refusalText(refusal: Refusal, format: Format, now: number): string {
  switch (refusal.code) {
    case "no-such-stream":
      return "Not logged: it is not in this log.";
    case "already-started":
      return "Not logged: this has been started already.";
    case "already-logged":
      return `Coat ${refusal.number} is in the log already, ${ago(refusal.at, now)}.`;
    case "coat-out-of-turn":
      return `Not logged: the next coat is number ${refusal.expected}, not ${refusal.found}. Another tab may have logged one.`;
    case "wrong-phase":
      return `Not logged: the piece is ${phaseWords[refusal.phase]}. Allowed while it is ${listed(refusal.allowed.map((phase) => phaseWords[phase]))}.`;
    case "in-future":
      return `Not logged: ${dayTime(refusal.at, refusal.now, format.locale)} has not come yet.`;
    case "before-start":
      return `Not logged: ${dayTime(refusal.at, now, format.locale)} is before the start, ${dayTime(refusal.startedAt, now, format.locale)}.`;
    case "out-of-order":
      return `Not logged: ${dayTime(refusal.at, now, format.locale)} would put it ${orderWords(refusal, format, now)}.`;
    case "start-carries-entries":
      return `The start can't be deleted: ${refusal.count === 1 ? "an entry follows" : `${refusal.count} entries follow`} it. ${refusal.kind === "piece" ? "Archive the piece instead." : "Delete those first, or end it."}`;
    case "not-started":
      return "Not logged: it is planned but not started.";
    case "already-ended":
      return `Not logged: this ended ${dayTime(refusal.endedAt, now, format.locale)}. If it went on, delete the end first.`;
    case "no-such-step":
      return `Not logged: the plan has no step “${refusal.step.replaceAll("-", " ")}”.`;
    case "uneven-readings":
      return `Not logged: there are ${counted(refusal.expected, "time")} and ${counted(refusal.found, "value")} of ${fieldWords(refusal.field).name}. The numbers must match.`;
    case "readings-not-rising":
      return `Not logged: reading ${refusal.place} is timed ${secondsWords(refusal.found, format)}${refusal.before === null ? "" : `, the one before it ${secondsWords(refusal.before, format)}`}. Times are whole seconds, each later than the last.`;
    case "readings-too-long":
      return `Not logged: the readings span ${format.show("h", refusal.spanS / 3600)}. One entry takes ${format.show("h", refusal.mostS / 3600)}; log the rest separately.`;
    case "out-of-range": {
      const { name, quantity } = fieldWords(refusal.field);
      const show = (value: number): string => format.show(quantity, value);
      return `Not logged: ${name} of ${show(refusal.found)} can't be right. It lies between ${show(refusal.low)} and ${show(refusal.high)}.`;
    }
    case "missing":
      return `Not logged: ${fieldWords(refusal.field).name} is missing.`;
    case "not-found":
      return "That entry is not in this log.";
    case "already-struck":
      return "That entry has been deleted already.";
    case "not-replaceable":
      return "That entry can't be corrected. Delete it and log the right one.";
    case "hold-without-reason":
      return refusal.rules.length === 0
        ? "Write a reason for each hold you override."
        : `Write a reason for each hold you override; ${refusal.rules.length === 1 ? "one has" : `${refusal.rules.length} have`} none.`;
  }
}

function orderWords(
  { after, before }: Extract<Refusal, { code: "out-of-order" }>,
  { locale }: Format,
  now: number,
): string {
  const say = (at: number): string => dayTime(at, now, locale);
  if (after === null) return before === null ? "out of order" : `after what follows it, ${say(before)}`;
  return before === null
    ? `before what it follows, ${say(after)}`
    : `out of order, between ${say(after)} and ${say(before)}`;
}

const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`;

const secondsWords = (second: number, format: Format): string =>
  Number.isFinite(second) ? `second ${format.number(second, 3)}` : "with no number";

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}
