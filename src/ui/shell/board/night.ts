import type { Settings } from "../../../storage/settings.ts";

/** The board is dark from ten in the evening to six in the morning, minutes of the day; judgement. */
const night = { fromMin: 22 * 60, toMin: 6 * 60 } as const;

/** Whether the board is dimmed at a minute of the device's own day, 0 to 1439: never while somebody is at the bucket. */
export function isNight(minute: number, bucketHours: Settings["bucketHours"]): boolean {
  if (minute < night.fromMin && minute >= night.toMin) return false;
  return !bucketHours.some(({ fromMin, toMin }) =>
    fromMin <= toMin ? minute >= fromMin && minute < toMin : minute >= fromMin || minute < toMin,
  );
}
