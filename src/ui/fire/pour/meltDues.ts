import type { Melt } from "../../../logbook/fire/fireStates.ts";
import type { Sensed } from "../../../logbook/pour/pourStanding.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { paths } from "../../base/state/paths.ts";

/**
 * When a melt on the fire should be at pouring heat, as `sensed` has it from the furnace's power and the readings.
 * Nothing once it was read there, or where that can't be said. `metal` is its name.
 */
export function meltDues(
  melt: Pick<Melt, "id">,
  sensed: Pick<Sensed, "endsAt" | "doneAt"> | null,
  metal: string,
): readonly RingDue[] {
  if (sensed === null || sensed.doneAt !== null || sensed.endsAt === null) return [];
  const says = "An estimate from the furnace's power and the readings: measure the metal.";
  return [
    {
      id: `${melt.id}-hot`,
      dueMs: sensed.endsAt,
      words: `${metal}: about at pouring temperature, measure it`,
      name: metal,
      notice: { title: `${metal}: about at pouring heat`, body: says },
      path: paths.melt(melt.id),
      calendar: () => ({
        durationMin: 10,
        summary: `Melt, ${metal}: about at pouring heat`,
        description: `${says} If the melt is late, add it to the calendar again.`,
      }),
    },
  ];
}
