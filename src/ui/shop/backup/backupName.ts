import type { Moment } from "../../../logbook/log/command.ts";
import { dateFormat } from "../../base/format/formatters.ts";

/**
 * "dipbook-2026-03-12-1840-a1b2.zip", in the zone of the shop, so that files sort by when they were made; the letters
 * are the end of this device's name in the log.
 */
export function backupName({ now, zone, device }: Pick<Moment, "now" | "zone" | "device">): string {
  // Swedish writes dates as ISO 8601 does.
  const local = dateFormat("sv-SE", {
    dateStyle: "short",
    timeStyle: "short",
    timeZone: zone,
  }).format(now);
  const mark = device.replace(/[^A-Za-z0-9]/g, "").slice(-4);
  return `dipbook-${local.replace(" ", "-").replace(":", "")}${mark === "" ? "" : `-${mark}`}.zip`;
}
