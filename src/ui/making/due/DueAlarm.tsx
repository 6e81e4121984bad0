import { useDueAlarm } from "./useDueAlarm.ts";

/** Watches the due times of the rack while the app lives. Draws nothing. */
export function DueAlarm(): null {
  useDueAlarm();
  return null;
}
