import { heldStandings } from "../../../rules/coverHold.ts";
import { dueTimes, type DueTime } from "../../base/alarm/dueTimes.ts";
import type { RackItem } from "../../base/state/live.ts";

/** The due times of these pieces, earliest first, with what is held said so. */
export const duesOf = (items: readonly RackItem[]): readonly DueTime[] =>
  dueTimes(
    items.map(({ standing }) => standing),
    heldStandings(items),
  );
