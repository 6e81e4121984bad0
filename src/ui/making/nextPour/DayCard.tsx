import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { PickField } from "../../base/forms/PickField.tsx";
import { MomentField } from "../../fire/pour/MomentField.tsx";
import type { AskedDay } from "./useNextPour.ts";

const another = "another";

/** Which day is asked about: a planned pour, or any moment. Kept as a draft of this device, never in the log. */
export function DayCard({
  day,
  planned,
  now,
  onChange,
}: {
  readonly day: AskedDay;
  readonly planned: readonly Pour[];
  readonly now: number;
  /** A time of null is that of no day chosen yet. */
  readonly onChange: (day: { readonly pourId: string | null; readonly pourAt: number | null }) => void;
}) {
  const { locale } = useFormat();
  return (
    <Card title="The day">
      {planned.length > 0 && (
        <PickField
          label="Which pour"
          options={[
            ...planned.map((pour) => ({
              value: pour.id,
              label: `Planned: ${dayTime(pour.plan.pourAt, now, locale)}`,
            })),
            { value: another, label: "Another day" },
          ]}
          value={day.pourId ?? another}
          onChange={(id) => onChange({ pourId: id === another ? null : id, pourAt: null })}
        />
      )}
      {day.pourId === null && (
        <MomentField
          label="Pour time"
          at={day.pourAt}
          onChange={(pourAt) => onChange({ pourId: null, pourAt })}
        />
      )}
    </Card>
  );
}
