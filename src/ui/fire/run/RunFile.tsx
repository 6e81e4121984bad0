import { useId, useState } from "react";
import { useRun } from "../../base/state/live.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { dayTime } from "../../base/format/time.ts";
import { readKilnCsv, type KilnCsv } from "../../../workers/kilnCsv.ts";
import { fileFaultWords, loggedCommands } from "./kilnFile.ts";
import sheet from "../../base/styles/sheet.module.css";
import field from "../../base/parts/field.module.css";
import styles from "./run.module.css";

const mostBytes = 8_000_000;

/** A kiln logger's file: looked through first, taken in at a tap, clipped to the run. */
export function RunFile({ runId, startedAt }: { readonly runId: string; readonly startedAt: number }) {
  const { clock, logAll, moment } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const known = useRun(runId)?.run.readings ?? [];
  const id = useId();
  const [file, setFile] = useState<{ readonly name: string; readonly text: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [unit, setUnit] = useState<"C" | "F">(format.unit("temp") === "°F" ? "F" : "C");
  const read: KilnCsv | null =
    file === null
      ? null
      : readKilnCsv(file.text, { zone: moment().zone, startMs: startedAt, endMs: clock(), unit });
  const open = async (chosen: File | undefined): Promise<void> => {
    setFault(null);
    setFile(null);
    if (chosen === undefined) return;
    if (chosen.size > mostBytes) return setFault("The file is over 8 MB: export this run alone.");
    try {
      setFile({ name: chosen.name, text: await chosen.text() });
    } catch {
      setFault("The file could not be read.");
    }
  };
  const take = async (): Promise<void> => {
    if (read === null || !read.ok || file === null) return;
    const commands = loggedCommands(read, {
      runId,
      source: file.name,
      stored: new Set(known.map(({ at }) => at)),
    });
    if (commands.length === 0) return setFault("All of it is in the log already.");
    const done = await logAll(commands);
    if (!done.ok) return;
    say(`${commands.reduce((sum, { body }) => sum + body.afterS.length, 0)} readings taken in.`);
    setFile(null);
  };
  return (
    <div className={sheet["stack"]}>
      <label htmlFor={id} className={field["label"]}>
        File of a kiln logger (CSV)
      </label>
      <input
        id={id}
        type="file"
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        className={styles["file"]}
        onChange={(event) => void open(event.target.files?.[0])}
      />
      {fault !== null && <p role="alert">{fault}</p>}
      {read !== null && !read.ok && <p role="alert">{fileFaultWords[read.why]}</p>}
      {read !== null && read.ok && (
        <>
          <p>
            {read.atS.length} readings of “{read.column}” from{" "}
            {dayTime((read.atS[0] ?? 0) * 1000, clock(), format.locale)} to{" "}
            {dayTime((read.atS.at(-1) ?? 0) * 1000, clock(), format.locale)}, up to{" "}
            {format.show(
              "temp",
              read.kilnC.reduce((most, one) => Math.max(most, one), -Infinity),
            )}
            . {read.clock === "elapsed" && "Its times are counted from this run’s start. "}
            {read.clock === "time-of-day" && "It tells no date: the day of this run is taken. "}
            {read.outside > 0 && `${read.outside} lines lie outside the run and are left out. `}
            {read.unread > 0 && `${read.unread} lines are no readings.`}
          </p>
          {!read.isUnitTold && (
            <Choice
              label="The file does not tell its unit: it is"
              options={[
                { value: "C", label: "°C" },
                { value: "F", label: "°F" },
              ]}
              value={unit}
              onChange={setUnit}
            />
          )}
          <Button onPress={take}>Take them in</Button>
        </>
      )}
    </div>
  );
}
