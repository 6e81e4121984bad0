import { handOver } from "../../../device/share.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { rememberTold } from "./calendarTold.ts";
import { dueCalendar } from "../../base/alarm/dueCalendar.ts";
import type { DueTime } from "../../base/alarm/dueTimes.ts";

/** Hands due times to the phone's calendar as a file; `standing` is every due time of the rack. */
export function useCalendarExport(standing: readonly DueTime[]) {
  const { db, clock } = useShop();
  const [{ calendarSequence }, changeSettings] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  return async (dues: readonly DueTime[], name: string): Promise<void> => {
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
    await rememberTold(db, { given: dues, standing });
    tell("Open the file and add it to your calendar: only then does it ring.");
  };
}
