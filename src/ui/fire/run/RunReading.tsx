import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { expectedReading, type ExpectedReading } from "../../../logbook/fire/expectedReading.ts";
import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
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

const emptyWords: Readonly<Record<Exclude<ExpectedReading["why"], "carried">, string>> = {
  unread: "Not read yet. The keys start from the kiln at the start of the run.",
  "off-plan": "The last reading is far from the plan. The keys start from that reading.",
};

/** A reading by a few taps. What the kiln is likely to show is said, and nothing is logged until somebody set it. */
export function RunReading({ runId, standing }: { readonly runId: string; readonly standing: RunStanding }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const round = (kilnC: number): number =>
    format.fromShown("temp", Math.round(format.toShown("temp", kilnC) / 5) * 5);
  const [own, setOwn] = useState<number | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const expected = expectedReading(standing);
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
  const likelyC = expected.kilnC === null ? null : Math.min(high, Math.max(low, round(expected.kilnC)));
  return (
    <Card title="Read the kiln">
      <ReadingKeys
        label="Kiln"
        value={own}
        from={likelyC ?? round(expected.fromC)}
        unset={likelyC === null ? "Not read" : `About ${format.show("temp", likelyC)}?`}
        onChange={setOwn}
        low={low}
        high={high}
      />
      <p className={sheet["soft"]}>
        {own !== null
          ? "By the kiln’s own thermocouple."
          : expected.why === "carried"
            ? "Expected from the last reading and the plan. Enter what the kiln shows."
            : emptyWords[expected.why]}
      </p>
      {own === null && likelyC !== null && (
        <Button onPress={() => setOwn(likelyC)}>It shows {format.show("temp", likelyC)}</Button>
      )}
      <Button
        kind="secondary"
        size="big"
        onPress={() => own !== null && save(own)}
        disabledReason={own === null ? "Set the temperature first." : null}
        debounceMs={700}
      >
        {own === null ? "Log the reading" : `Log ${format.show("temp", own)}`}
      </Button>
      <details>
        <summary>More: type it, earlier time, thermometer or file</summary>
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
            Most Bluetooth thermometers can’t take kiln heat: check the probe’s limit.
          </p>
          <RunFile runId={runId} startedAt={standing.run.startedAt} endedAt={null} />
        </div>
      </details>
    </Card>
  );
}
