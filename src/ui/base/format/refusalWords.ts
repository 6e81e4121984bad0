import type { Refusal } from "../../../logbook/log/command.ts";
import { fieldWords } from "./fieldWords.ts";
import { phaseWords } from "./phaseWords.ts";
import { ago, dayTime } from "./time.ts";
import type { Format } from "./units.ts";
import { refusals as t } from "../words/refusals.ts";
import { counts } from "../words/counts.ts";

/** Why it was not logged, and what would be taken, as one or two sentences. */
export function refusalText(refusal: Refusal, format: Format, now: number): string {
  switch (refusal.code) {
    case "no-such-stream":
      return t["refusal.no-such-stream"];
    case "already-started":
      return t["refusal.already-started"];
    case "already-logged":
      return t["refusal.already-logged"]({ number: refusal.number, ago: ago(refusal.at, now) });
    case "coat-out-of-turn":
      return t["refusal.coat-out-of-turn"]({ expected: refusal.expected, found: refusal.found });
    case "wrong-phase":
      return t["refusal.wrong-phase"]({
        part: phaseWords[refusal.phase],
        listed: listed(refusal.allowed.map((phase) => phaseWords[phase])),
      });
    case "in-future":
      return t["refusal.in-future"]({ dayTime: dayTime(refusal.at, refusal.now, format.locale) });
    case "before-start":
      return t["refusal.before-start"]({
        dayTime: dayTime(refusal.at, now, format.locale),
        dayTime2: dayTime(refusal.startedAt, now, format.locale),
      });
    case "out-of-order":
      return t["refusal.out-of-order"]({
        dayTime: dayTime(refusal.at, now, format.locale),
        orderWords: orderWords(refusal, format, now),
      });
    case "start-carries-entries":
      return t["refusal.start-carries-entries"]({
        entriesFollow: t["refusal.entriesFollow"](refusal.count),
        instead:
          refusal.kind === "piece"
            ? t["refusal.start-carries-entries.archiveThePieceInstead"]
            : t["refusal.start-carries-entries.deleteThoseFirstOr"],
      });
    case "not-started":
      return t["refusal.not-started"];
    case "already-ended":
      return t["refusal.already-ended"]({ dayTime: dayTime(refusal.endedAt, now, format.locale) });
    case "no-such-step":
      return t["refusal.no-such-step"]({ part: refusal.step.replaceAll("-", " ") });
    case "uneven-readings":
      return t["refusal.uneven-readings"]({
        counted: counts.times(refusal.expected),
        counted2: counts.values(refusal.found),
        part: fieldWords(refusal.field).name,
      });
    case "readings-not-rising":
      return t["refusal.readings-not-rising"]({
        place: refusal.place,
        secondsWords: secondsWords(refusal.found, format),
        clause:
          refusal.before === null
            ? ""
            : t["refusal.readings-not-rising.theOneBeforeIt"]({
                secondsWords: secondsWords(refusal.before, format),
              }),
      });
    case "readings-too-long":
      return t["refusal.readings-too-long"]({
        spanS: format.show("h", refusal.spanS / 3600),
        mostS: format.show("h", refusal.mostS / 3600),
      });
    case "out-of-range": {
      const { name, quantity } = fieldWords(refusal.field);
      const show = (value: number): string => format.show(quantity, value);
      return t["refusal.out-of-range"]({
        name,
        show: show(refusal.found),
        show2: show(refusal.low),
        show3: show(refusal.high),
      });
    }
    case "missing":
      return t["refusal.missing"]({ part: fieldWords(refusal.field).name });
    case "not-found":
      return t["refusal.not-found"];
    case "already-struck":
      return t["refusal.already-struck"];
    case "not-replaceable":
      return t["refusal.not-replaceable"];
    case "hold-without-reason":
      return refusal.rules.length === 0
        ? t["refusal.hold-without-reason"]
        : t["refusal.hold-without-reason.some"](refusal.rules.length);
  }
}

function orderWords(
  { after, before }: Extract<Refusal, { code: "out-of-order" }>,
  { locale }: Format,
  now: number,
): string {
  const say = (at: number): string => dayTime(at, now, locale);
  if (after === null)
    return before === null ? t["order.outOfOrder"] : t["order.afterWhatFollowsIt"]({ say: say(before) });
  return before === null
    ? t["order.beforeWhatItFollows"]({ say: say(after) })
    : t["order.outOfOrderBetween"]({ say: say(after), say2: say(before) });
}

const secondsWords = (second: number, format: Format): string =>
  Number.isFinite(second)
    ? t["seconds.secondPart"]({ part: format.number(second, 3) })
    : t["seconds.withNoNumber"];

function listed(words: readonly string[]): string {
  return words.length < 2
    ? words.join("")
    : t["listed.listOrPart"]({ list: words.slice(0, -1).join(", "), part: words.at(-1) ?? "" });
}
