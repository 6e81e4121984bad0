import { catalogue, plural } from "./catalogue.ts";

/** How many of a thing, by the rules of the language. */
export const counts = catalogue("counts", {
  coats: plural({ one: "{count} coat", other: "{count} coats" }),
  moreCoats: plural({ one: "{count} more coat", other: "{count} more coats" }),
  checks: plural({ one: "{count} check", other: "{count} checks" }),
  readings: plural({ one: "{count} reading", other: "{count} readings" }),
  times: plural({ one: "{count} time", other: "{count} times" }),
  values: plural({ one: "{count} value", other: "{count} values" }),
  cracks: plural({ one: "{count} crack", other: "{count} cracks" }),
  days: plural({ one: "{count} day", other: "{count} days" }),
  pins: plural({ one: "{count} pin", other: "{count} pins" }),
});
