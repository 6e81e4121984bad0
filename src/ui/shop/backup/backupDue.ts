import { millisecondsInDay as dayMs } from "date-fns/constants";
import type { Settings } from "../../../storage/settings.ts";

export type BackupDue = { readonly days: number | null; readonly entries: number };

/**
 * Whether it is time for a backup: so many days since the last, or so many new entries, as the person has set; null
 * while it is not. Without any backup yet the days count from the first entry. `days` is null where there was none.
 */
export function backupDue(
  { lastBackup, remindDays, remindEntries }: Pick<Settings, "lastBackup" | "remindDays" | "remindEntries">,
  {
    now,
    entries,
    firstAt,
  }: { readonly now: number; readonly entries: number; readonly firstAt: number | null },
): BackupDue | null {
  const fresh = entries - (lastBackup?.logEntries ?? 0);
  const since = lastBackup?.at ?? firstAt;
  if (fresh <= 0 || since === null) return null;
  const days = Math.floor((now - since) / dayMs);
  const isDue = (remindDays > 0 && days >= remindDays) || (remindEntries > 0 && fresh >= remindEntries);
  return isDue ? { days: lastBackup === null ? null : days, entries: fresh } : null;
}
