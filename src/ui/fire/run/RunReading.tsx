import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { WhenField } from "../../base/forms/WhenField.tsx";
import { SensorButton } from "../../air/sensors/SensorButton.tsx";
import { ReadingKeys } from "./ReadingKeys.tsx";
import { RunFile } from "./RunFile.tsx";
import sheet from "../../base/styles/sheet.module.css";

/** A reading in two taps: what the plan has now is filled in, the keys are for what is otherwise. */
export function RunReading({
  runId,
  startedAt,
  plannedC,
}: {
  readonly runId: string;
  readonly startedAt: number;
  readonly plannedC: number;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const round = (kilnC: number): number =>
    format.fromShown("temp", Math.round(format.toShown("temp", kilnC) / 5) * 5);
  // Until a key is touched it goes with the plan.
  const [own, setOwn] = useState<number | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const kilnC = own ?? round(plannedC);
  const { low, high } = ranges.kilnC;
  const save = async (readC: number): Promise<void> => {
    const done = await log({
      do: "log",
      stream: streamOf("run", runId),
      type: "run-read",
      body: { kilnC: Number(readC.toFixed(2)) },
      at: at ?? undefined,
    });
    if (!done.ok) return;
    setOwn(null);
    setAt(null);
    say(`Kiln read: ${format.show("temp", readC)}`);
  };
  return (
    <Card title="Read the kiln">
      <ReadingKeys label="Kiln" value={kilnC} onChange={setOwn} low={low} high={high} />
      <p className={sheet["soft"]}>
        {own === null
          ? "Filled in from the plan: set it to what the kiln shows."
          : "By the kiln’s own thermocouple."}
      </p>
      <Button kind="secondary" size="big" onPress={() => save(kilnC)} debounceMs={700}>
        Log {format.show("temp", kilnC)}
      </Button>
      <details>
        <summary>Type it, an earlier time, a thermometer or a file</summary>
        <div className={sheet["stack"]}>
          <NumberField
            label="Kiln, typed"
            quantity="temp"
            value={own}
            min={low}
            max={high}
            onChange={setOwn}
          />
          <WhenField label="When it was read" at={at} onChange={setAt} />
          <SensorButton kind="thermometer" place={`run/${runId}`} onValue={({ tempC }) => setOwn(tempC)} />
          <p className={sheet["soft"]}>
            Bluetooth thermometers of the standard service are seldom made for a kiln’s heat: mind what the
            probe bears.
          </p>
          <RunFile runId={runId} startedAt={startedAt} />
        </div>
      </details>
    </Card>
  );
}
