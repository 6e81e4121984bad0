import type { Moment } from "../../logbook/command.ts";

/** "dipbook-2026-03-12-1840.json", in the zone of the shop, so that files sort by when they were made. */
export function backupName({ now, zone }: Pick<Moment, "now" | "zone">): string {
  // Swedish writes dates as ISO 8601 does.
  const local = new Intl.DateTimeFormat("sv-SE", {
    dateStyle: "short",
    timeStyle: "short",
    timeZone: zone,
  }).format(now);
  return `dipbook-${local.replace(" ", "-").replace(":", "")}.json`;
}
