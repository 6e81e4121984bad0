import { useState } from "react";
import styles from "./run.module.css";
import {
  burnoutIn,
  crackIn,
  endFaults,
  endRun,
  startingEnd,
  type EndDraft,
  type EndFault,
} from "../../../logbook/acts/endRun.ts";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { residueBar } from "../../../logbook/fire/metalReady.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useUndoing } from "../../base/state/useUndoing.ts";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { TickList } from "../../base/forms/TickList.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberOf, TextOf } from "../../base/forms/BoundFields.tsx";

const insides = [...insideOptions, { value: "stopped", label: "Stopped", hint: "Stopped early." }] as const;
const faultWords: Readonly<Record<EndFault, string>> = {
  "no-inside": "Look inside each piece and tap what you saw.",
  "no-peak": "Enter the highest temperature, or untick “Fired”.",
  "no-hold": "Enter the minutes at the top, or untick “Fired”.",
  "no-shell": "Enter the shell temperature, or untick “Preheated”.",
};

/** The end: how it went, how each piece came out, what was reached; written into every piece's log. */
export function RunEnd({
  run,
  pieces,
  energyKWh,
}: {
  readonly run: Run;
  readonly pieces: readonly Piece[];
  readonly energyKWh: number | null;
}) {
  const [isOpen, setOpen] = useState(false);
  if (!isOpen)
    return (
      <div>
        <Button onPress={() => setOpen(true)}>End the run…</Button>
      </div>
    );
  // What is filled in follows the readings until the form is touched.
  const about = `${run.readings.length} ${run.readings.at(-1)?.at ?? 0}`;
  return <EndForm run={run} pieces={pieces} initial={startingEnd(run, energyKWh)} about={about} />;
}

function EndForm({
  run,
  pieces,
  initial,
  about,
}: {
  readonly run: Run;
  readonly pieces: readonly Piece[];
  readonly initial: EndDraft;
  readonly about: string;
}) {
  const { logAll } = useShop();
  const format = useFormat();
  const undoing = useUndoing();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<EndDraft>(`run/${run.id}/end`, initial, about);
  const { draft, set } = form;
  const [faults, setFaults] = useState<readonly EndFault[]>([]);
  const remaining = pieces.filter((piece) => crackIn(run, piece) === null);
  const ticked = [...(draft.isFired ? ["fired"] : []), ...(draft.isPreheated ? ["hot"] : [])];
  const isFiredForResidue = (piece: Piece): boolean =>
    run.plan.purpose === "firing" && residueBar(piece).length > 0;
  const isPreheat = run.plan.purpose === "preheat";

  // Figures that nobody touched are named on the key that logs them.
  const figures = [
    ...(draft.isFired && draft.peakC !== null ? [format.show("temp", draft.peakC)] : []),
    ...(draft.isFired && draft.holdMin !== null ? [`${format.show("min", draft.holdMin)} held`] : []),
    ...(draft.isPreheated && draft.shellC !== null ? [`shells at ${format.show("temp", draft.shellC)}`] : []),
    ...(draft.energyKWh !== null ? [format.show("kWh", draft.energyKWh)] : []),
  ];
  const isFilledIn = figures.length > 0 && !form.isTouched("peakC", "holdMin", "shellC", "energyKWh");

  const end = async (): Promise<void> => {
    const found = endFaults(draft, { run, pieces });
    setFaults(found);
    if (found.length > 0) return;
    const done = await logAll(endRun(run, pieces, draft));
    if (!done.ok) return;
    await form.drop();
    say(draft.result === "done" ? "Run ended." : "Run stopped.", "done", undoing(done));
  };

  return (
    <Card title="End the run" tone="ember">
      <Choice
        label="The run"
        options={[
          { value: "done", label: "Completed" },
          { value: "stopped", label: "Stopped" },
        ]}
        value={draft.result}
        onChange={(result) =>
          set(result === "stopped" ? { result, isFired: false, isPreheated: false } : { result })
        }
      />
      {remaining.map((piece) =>
        burnoutIn(run, piece) === null && !isFiredForResidue(piece) ? null : (
          <Choice
            key={piece.id}
            label={`${piece.plan.name}, inside`}
            options={burnoutIn(run, piece) === null ? insideOptions : insides}
            value={
              draft.inside[piece.id] ??
              (burnoutIn(run, piece) !== null && draft.result === "stopped" ? "stopped" : null)
            }
            onChange={(inside) => set({ inside: { ...draft.inside, [piece.id]: inside } })}
          />
        ),
      )}
      <TickList
        label="Log on each piece"
        options={[
          ...(isPreheat ? [] : [{ value: "fired", label: "Fired", hint: "With the figures below." }]),
          { value: "hot", label: "Preheated", hint: "Preheated." },
        ]}
        ticked={ticked}
        onChange={(now) => set({ isFired: now.includes("fired"), isPreheated: now.includes("hot") })}
      />
      <div className={styles["grid"]}>
        {draft.isFired && (
          <>
            <NumberOf
              form={form}
              at="peakC"
              label="Hottest"
              quantity="temp"
              hint={run.readings.length === 0 ? "No reading: your estimate." : "The hottest reading."}
            />
            <NumberOf
              form={form}
              at="holdMin"
              label="Held for"
              quantity="min"
              min={0}
              hint={`By the readings: within ${format.show("tempDiff", 15)} of the highest. With few readings, correct it.`}
            />
          </>
        )}
        {draft.isPreheated && (
          <NumberOf
            form={form}
            at="shellC"
            label="Shell temperature"
            quantity="temp"
            hint="The kiln’s last reading, soaked through."
          />
        )}
        <NumberOf
          form={form}
          at="energyKWh"
          label="Energy"
          quantity="kWh"
          min={0}
          hint="Estimated from the readings. Use a meter if you have one."
        />
      </div>
      <TextOf form={form} at="note" label="Note" />
      {faults.map((fault) => (
        <p key={fault} role="alert">
          {faultWords[fault]}
        </p>
      ))}
      <Button kind="primary" size="big" onPress={end} debounceMs={700}>
        {isFilledIn ? `End the run with ${figures.join(", ")}` : "End the run and log it on the pieces"}
      </Button>
    </Card>
  );
}
