import { useState } from "react";
import type { MeltHeat } from "../../../physics/metal/melt.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg, type PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import { useNow } from "../../base/state/useNow.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, clockTime, duration } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Stepper } from "../../base/parts/Stepper.tsx";
import { MeltChart } from "./MeltChart.tsx";
import { meltExpected, metalAfter, type MeltExpected } from "../../../logbook/casting/meltCourse.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

const standingSays: Readonly<Record<MeltExpected["standing"], string>> = {
  "on-time": "Melting as expected.",
  ahead: "Ahead of plan: check the shell and the sand.",
  behind: "Behind plan: keep the shell in the kiln.",
  "not-read": "No reading yet. This is from the furnace’s power only.",
};

/** The melt against the clock: when pouring heat is to be expected, the readings, and the next one. */
export function MeltLive({
  melt,
  heat,
  power,
}: {
  readonly melt: Melt;
  readonly heat: MeltHeat | null;
  readonly power: PowerKnown | null;
}) {
  const { locale } = useFormat();
  const tick = useNow(10_000);
  const { clock } = useShop();
  const { startedAt, readings, plan, ended } = melt;
  if (startedAt === null) return null;
  const now = Math.max(tick, clock());
  const massKg = chargedKg(melt);
  const hot = readings.find(({ metalC }) => metalC >= plan.pourC);
  const expected =
    heat === null || power === null || !(massKg > 0) || plan.pourC < heat.liquidusC
      ? null
      : meltExpected({ startedAt, readings, power, massKg, heat, pourC: plan.pourC });
  const isOpen = ended === null;
  return (
    <Card title={isOpen ? "Melting" : "How it went"} tone={isOpen ? "ember" : "plain"}>
      {isOpen && (
        <p className={css["big"]} role="status">
          {hot !== undefined ? (
            <>Pouring heat reached {ago(hot.at, now)}</>
          ) : expected === null ? (
            <>{duration(now - startedAt)} melting</>
          ) : (
            <>
              Pouring heat about {clockTime(expected.likelyAt, locale)}{" "}
              <small>
                between {clockTime(expected.earlyAt, locale)} and {clockTime(expected.lateAt, locale)}
              </small>
            </>
          )}
        </p>
      )}
      {isOpen && (
        <p>
          {duration(Math.max(0, now - startedAt))} since the furnace was lit
          {expected === null || hot !== undefined
            ? "."
            : now > expected.lateAt
              ? ", and late: measure the metal, check the fuel and the lid."
              : `. ${standingSays[expected.standing]}`}
        </p>
      )}
      {heat !== null && massKg > 0 && (
        <MeltChart melt={melt} heat={heat} power={power} massKg={massKg} now={now} />
      )}
      {isOpen && (
        <ReadMetal key={readings.length} melt={melt} start={startC({ melt, heat, power, massKg, now })} />
      )}
    </Card>
  );
}

function ReadMetal({ melt, start }: { readonly melt: Melt; readonly start: number }) {
  const { log } = useShop();
  const format = useFormat();
  const unit = format.unit("temp");
  const likely = Math.round(format.toShown("temp", start) / 10) * 10;
  // Empty until somebody set it: what the sum expects is not a reading.
  const [shown, setShown] = useState<number | null>(null);
  const write = () =>
    shown !== null &&
    log({
      do: "log",
      stream: streamOf("melt", melt.id),
      type: "melt-read",
      body: { metalC: Number(format.fromShown("temp", shown).toFixed(1)) },
    });
  return (
    <div className={sheet["stack3"]}>
      <Stepper
        label="Metal, by thermocouple"
        value={shown}
        start={likely}
        onChange={setShown}
        step={10}
        min={unit === "°F" ? 220 : 100}
        max={unit === "°F" ? 3900 : 2150}
        show={(value) => `${format.number(value, 0)} ${unit}`}
      />
      {shown === null && (
        <Button onPress={() => setShown(likely)}>
          It shows {format.number(likely, 0)} {unit}
        </Button>
      )}
      <Button
        kind="primary"
        size="big"
        onPress={write}
        disabledReason={shown === null ? "Set what the thermocouple shows." : null}
      >
        Log this reading
      </Button>
      <p className={sheet["soft"]}>Dry and warm the thermocouple before it goes in.</p>
    </div>
  );
}

/** Where the stepper begins: the last reading, else what is to be expected by now. */
function startC({
  melt,
  heat,
  power,
  massKg,
  now,
}: {
  readonly melt: Melt;
  readonly heat: MeltHeat | null;
  readonly power: PowerKnown | null;
  readonly massKg: number;
  readonly now: number;
}): number {
  const last = melt.readings.at(-1);
  if (last !== undefined) return last.metalC;
  if (heat === null || power === null || melt.startedAt === null || !(massKg > 0)) return melt.plan.pourC;
  const afterS = Math.max(0, (now - melt.startedAt) / 1000);
  const c = metalAfter({ afterS, powerW: power.likelyW, massKg, heat });
  return Math.min(melt.plan.pourC, Math.max(300, c));
}
