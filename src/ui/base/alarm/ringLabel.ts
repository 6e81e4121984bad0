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

/** Instead of a promise, where the layer was tried on this device and stayed silent. */
export const silentWords: Record<Exclude<RingLayer, "none">, string> = {
  screen: "This screen did not ring here when it was tried. Try it again before you rely on it.",
  calendar: "The calendar did not ring here when it was tried. Look here yourself.",
  notice: "No notification came here when it was tried. Look here yourself.",
};

export const calendarOld = "The calendar has an old time for this. Put it in the calendar again.";

export type RingState = {
  /** True while this screen is kept on and set to sound. */
  readonly screenOn: boolean;
  readonly permission: NotifyPermission;
  /** The time that was last put in the calendar for this coat; null when it never was. */
  readonly inCalendarMs: number | null;
  /** What was found when the layers were tried on this device. */
  readonly tested: Settings["ringTested"];
};

/** Times closer than this are the same in a calendar. */
const sameMs = 5 * minuteMs;

/** The honest label of one due time: the surest way left to make it known that has not stayed silent on this device. */
export function ringLabel(dueMs: number, { screenOn, permission, inCalendarMs, tested }: RingState): string {
  const calendarFits = inCalendarMs !== null && Math.abs(inCalendarMs - dueMs) < sameMs;
  const layers = [
    ...(screenOn ? (["screen"] as const) : []),
    ...(calendarFits ? (["calendar"] as const) : []),
    ...(permission === "granted" ? (["notice"] as const) : []),
  ];
  const sound = layers.find((layer) => tested[layer]?.rang !== false);
  if (inCalendarMs !== null && !calendarFits && sound !== "screen") return calendarOld;
  if (sound !== undefined) return layerWords[sound];
  const [silent] = layers;
  return silent === undefined ? layerWords.none : silentWords[silent];
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
