import { useState } from "react";
import field from "../../base/parts/field.module.css";
import css from "./backup.module.css";
import sheet from "../../base/styles/sheet.module.css";
import { clearScratch, pickedSink, scratchSink } from "../../../device/fileSink.ts";
import { handOver } from "../../../device/share.ts";
import { makeBackup } from "../../../storage/backup/makeBackup.ts";
import type { BackupChoice } from "../../../storage/backup/writeBackup.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { version } from "../../base/state/version.ts";
import { readOwnCount } from "../../../storage/demo.ts";
import { backupName } from "./backupName.ts";
import { entriesWords, photosWords } from "./backupWords.ts";
import { RemindFields } from "./RemindFields.tsx";
import { useWork } from "./useWork.ts";
import { WorkBar } from "./WorkBar.tsx";

type What = "all" | "no-photos" | "since";
const choices = [
  { value: "all", label: "All" },
  { value: "no-photos", label: "Without photos", hint: "Small. 3D files stay behind too." },
  { value: "since", label: "Since a date" },
] as const;

/** Midnight of that day on this device's clock. */
const startOfDay = (text: string): number => new Date(`${text}T00:00`).getTime();

type Result = { readonly ok: boolean; readonly text: string };

/** The whole log out as one file, read back before it counts. */
export function SaveCard() {
  const { db, moment } = useShop();
  const [settings, change] = useSettings();
  const { locale } = useFormat();
  const { work, run, cancel } = useWork();
  const [what, setWhat] = useState<What>("all");
  const [since, setSince] = useState<number | null>(null);
  const [result, setResult] = useState<Result | null>(null);
  const { lastBackup } = settings;

  const save = () =>
    run(
      async (signal, tell) => {
        setResult(null);
        const { now, zone, device } = moment();
        const name = backupName({ now, zone, device });
        const picked = await pickedSink(name);
        if (picked === "dismissed")
          return setResult({ ok: false, text: "Not saved: the dialog was closed." });
        if (picked === null) await clearScratch();
        const choice: BackupChoice = { photos: what !== "no-photos", since: what === "since" ? since : null };
        const made = await makeBackup(db.name, picked ?? (await scratchSink()), {
          choice,
          now,
          app: version,
          device,
          signal,
          onProgress: ({ done, of, what: part }) =>
            tell({ step: `Writing ${part === "kept" ? "settings" : part}`, share: of === 0 ? 1 : done / of }),
          onCheck: ({ doneBytes, ofBytes }) =>
            tell({ step: "Checking the file", share: doneBytes / ofBytes }),
        });
        if (made.checked === null)
          return setResult({
            ok: false,
            text: "The file did not save correctly. Try again, in another place.",
          });
        const { entries, photos } = made.checked;
        const counts = `${entriesWords(entries.found, locale)}, ${photosWords(photos.found, locale)}`;
        const gone = picked === null ? await handOver({ blob: made.file, name }) : "written";
        if (gone === "dismissed") return setResult({ ok: false, text: "Not saved: the sheet was closed." });
        if (gone === "failed")
          return setResult({
            ok: false,
            text: "Not saved: the browser refused the file. Try another browser.",
          });
        if (choice.since === null)
          await change({
            lastBackup: {
              at: now,
              name,
              logEntries: (await readOwnCount(db)).entries,
              entries: entries.found,
              photos: photos.found,
            },
          });
        setResult({
          ok: true,
          text:
            gone === "written"
              ? `Saved and checked where you put it: ${counts}. Keep a copy on another device.`
              : `Made and checked: ${counts}. Check that it arrived, and keep it on another device.`,
        });
      },
      (text) => setResult({ ok: false, text: `Not saved. ${text}` }),
    );

  return (
    <Card title="Backup">
      <p>
        {lastBackup === null
          ? "No backup yet. This device has the only copy of your log."
          : `Last backup: ${dayTime(lastBackup.at, moment().now, locale)}, ${entriesWords(lastBackup.entries, locale)}, ${photosWords(lastBackup.photos, locale)} (${lastBackup.name}).`}
      </p>
      <Choice label="What to save" options={choices} value={what} onChange={setWhat} />
      {what === "since" && (
        <label className={field["field"]}>
          <span className={field["label"]}>Entries from this day on</span>
          <input
            type="date"
            className={field["input"]}
            onChange={({ target }) => setSince(target.valueAsNumber >= 0 ? startOfDay(target.value) : null)}
          />
        </label>
      )}
      {work === null ? (
        <div className={css["keys"]}>
          <Button
            kind="primary"
            onPress={save}
            disabledReason={what === "since" && since === null ? "Choose the date first." : null}
          >
            Save a backup
          </Button>
        </div>
      ) : (
        <WorkBar work={work} onCancel={cancel} />
      )}
      {result !== null && (
        <p
          role={result.ok ? "status" : "alert"}
          className={result.ok ? undefined : `${sheet["breaks"]} ${sheet["alert"]}`}
        >
          {result.text}
        </p>
      )}
      <HowToLink to="backup" />
      <RemindFields />
    </Card>
  );
}
