import { handOver } from "../../../device/share.ts";
import { dayTime } from "../format/time.ts";
import { useFleeting } from "../state/fleeting.ts";
import { useSettings } from "../state/live.ts";
import { useShop } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import { allDues, useAlarmSources } from "./alarmSources.ts";
import { rememberSent } from "./calendarSent.ts";
import { dueCalendar } from "./dueCalendar.ts";
import type { RingDue } from "./ringDue.ts";

/** Hands due times to the phone's calendar as a file, and remembers which. */
export function useCalendarExport(): (dues: readonly RingDue[], name: string) => Promise<void> {
  const { db, clock } = useShop();
  const [{ calendarSequence }, changeSettings] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  return async (dues, name) => {
    const now = clock();
    const sequence = calendarSequence + 1;
    const blob = dueCalendar(dues, { now, sequence, say: (at) => dayTime(at, now, locale) });
    // The number is used up even if the file is not kept: a gap does no harm, a repeat would.
    await changeSettings({ calendarSequence: sequence });
    const result = await handOver({ blob, name: `${name}.ics`, by: "download" });
    if (result === "failed") {
      tell("The calendar file could not be made on this device.", "refused");
      return;
    }
    const standing = allDues(useAlarmSources.getState().sources);
    await rememberSent(db, { given: dues, standing, now });
    tell("Open the file and add it to your calendar: the alarm needs that.");
  };
}
