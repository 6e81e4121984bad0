import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { NotifyPermission } from "../../../device/notify.ts";
import type { Settings } from "../../../storage/settings.ts";

/** The ways a due time can make itself known, the surest first. */
export type RingLayer = "screen" | "calendar" | "notice" | "none";

/** What each layer can promise, and no more. */
export const layerWords: Record<RingLayer, string> = {
  screen: "Alarm sounds while this screen is on.",
  calendar: "Your calendar sounds the alarm, once you have added it there.",
  notice: "A notification may come while the app is still open somewhere. Once it is shut, nothing comes.",
  none: "No alarm. You see it here when you open the app.",
};

export const calendarOld = "The calendar has an old time for this. Put it in the calendar again.";

export type RingState = {
  /** True while this screen is kept on and set to sound. */
  readonly screenOn: boolean;
  readonly permission: NotifyPermission;
  /** The time that was last put in the calendar for this coat; null when it never was. */
  readonly inCalendarMs: number | null;
};

/** Times closer than this are the same in a calendar. */
const sameMs = 5 * minuteMs;

/** The honest label of one due time: what will make it known as things stand now. */
export function ringLabel(dueMs: number, { screenOn, permission, inCalendarMs }: RingState): string {
  const calendarFits = inCalendarMs !== null && Math.abs(inCalendarMs - dueMs) < sameMs;
  if (screenOn) return layerWords.screen;
  if (calendarFits) return layerWords.calendar;
  if (inCalendarMs !== null) return calendarOld;
  return permission === "granted" ? layerWords.notice : layerWords.none;
}

/** What was found on this device when the layer was tried. */
export function testedWords(tested: Settings["ringTested"][string], say: (at: number) => string): string {
  if (tested === undefined) return "Not tried yet.";
  return tested.rang
    ? `Tried here ${say(tested.at)}: it rang.`
    : `Tried here ${say(tested.at)}: it did NOT ring.`;
}

/** "Came due while the app was closed: Heron, Spout and 2 more". */
export function cameDueWords(dues: readonly { readonly name: string }[]): string {
  const [first, second, ...more] = dues.map(({ name }) => name);
  const names =
    second === undefined
      ? first
      : more.length === 0
        ? `${first} and ${second}`
        : `${first}, ${second} and ${more.length} more`;
  return `Came due while the app was closed: ${names}`;
}
