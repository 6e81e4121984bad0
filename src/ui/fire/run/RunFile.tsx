import { useId, useState } from "react";
import { useRun } from "../../base/state/live.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useUndoing } from "../../base/state/useUndoing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { dayTime } from "../../base/format/time.ts";
import type { KilnCsv } from "../../../workers/kilnCsv.ts";
import { fileFaultWords, loggedCommands } from "./kilnFile.ts";
import { useKilnFile } from "./useKilnFile.ts";
import sheet from "../../base/styles/sheet.module.css";
import field from "../../base/parts/field.module.css";
import styles from "./run.module.css";

const mostBytes = 8_000_000;

type Chosen = {
  readonly file: File;
  /** Until when its readings count, epoch ms: the run's end, or the moment the file was chosen. */
  readonly endMs: number;
};

/** A kiln logger's file: looked through first, taken in at a tap, clipped to the run. `endedAt` is null while it goes on. */
export function RunFile({
  runId,
  startedAt,
  endedAt,
}: {
  readonly runId: string;
  readonly startedAt: number;
  readonly endedAt: number | null;
}) {
  const { clock, logAll, moment } = useShop();
  const undoing = useUndoing();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const known = useRun(runId)?.run.readings ?? [];
  const id = useId();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [unit, setUnit] = useState<"C" | "F">(format.unit("temp") === "°F" ? "F" : "C");
  const [zone] = useState(() => moment().zone);
  const endMs = chosen?.endMs ?? startedAt;
  const read = useKilnFile(chosen?.file ?? null, { zone, startMs: startedAt, endMs, unit });
  const open = (file: File | undefined): void => {
    setFault(null);
    setChosen(null);
    if (file === undefined) return;
    if (file.size > mostBytes) return setFault("The file is over 8 MB: export this run alone.");
    setChosen({ file, endMs: endedAt ?? clock() });
  };
  const take = async (): Promise<void> => {
    if (read === null || !read.ok || chosen === null) return;
    const commands = loggedCommands(read, {
      runId,
      source: chosen.file.name,
      stored: new Set(known.map(({ at }) => at)),
    });
    if (commands.length === 0) return setFault("All readings are in the log already.");
    const done = await logAll(commands);
    if (!done.ok) return;
    const count = commands.reduce((sum, { body }) => sum + body.afterS.length, 0);
    say(`${count} readings added to the run.`, "done", undoing(done));
    setChosen(null);
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
        onChange={(event) => open(event.target.files?.[0])}
      />
      {fault !== null && <p role="alert">{fault}</p>}
      {chosen !== null && read === null && <p role="status">Reading the file…</p>}
      {read !== null && !read.ok && <p role="alert">{fileFaultWords[read.why]}</p>}
      {read !== null && read.ok && (
        <>
          <FoundInFile read={read} />
          {!read.isUnitTold && (
            <Choice
              label="The file has no unit. It is in"
              options={[
                { value: "C", label: "°C" },
                { value: "F", label: "°F" },
              ]}
              value={unit}
              onChange={setUnit}
            />
          )}
          <Button onPress={take}>Add them to the run</Button>
        </>
      )}
    </div>
  );
}

function FoundInFile({ read }: { readonly read: Extract<KilnCsv, { ok: true }> }) {
  const { clock } = useShop();
  const format = useFormat();
  const { atS, kilnC, column, outside, unread } = read;
  const when = (second: number | undefined): string => dayTime((second ?? 0) * 1000, clock(), format.locale);
  const hottestC = kilnC.reduce((most, one) => Math.max(most, one), -Infinity);
  return (
    <p>
      {atS.length} readings of “{column}” from {when(atS[0])} to {when(atS.at(-1))}, up to{" "}
      {format.show("temp", hottestC)}.{" "}
      {read.clock === "elapsed" && "Its times are counted from the start of this run. "}
      {read.clock === "time-of-day" && "It has no date: the day of this run is used. "}
      {outside > 0 && `${outside} lines lie outside the run and are left out. `}
      {unread > 0 && `${unread} lines are not readings.`}
    </p>
  );
}
