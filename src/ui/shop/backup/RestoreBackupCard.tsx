import { useId, useState } from "react";
import type { BackupPreview } from "../../../storage/backup/previewBackup.ts";
import { isSound, previewBackup } from "../../../storage/backup/previewBackup.ts";
import { restoreBackup } from "../../../storage/backup/restoreBackup.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Tick } from "../../base/parts/Tick.tsx";
import sheet from "../../base/styles/sheet.module.css";
import settingsCss from "../settings/SettingsPage.module.css";
import css from "./backup.module.css";
import { entriesWords, notABackupWords, photosWords } from "./backupWords.ts";
import { PreviewFacts } from "./PreviewFacts.tsx";
import { useWork } from "./useWork.ts";
import { WorkBar } from "./WorkBar.tsx";

type Looked = { readonly file: File; readonly preview: BackupPreview };

/** Reads a backup through before anything is changed; what is in it is shown, and joined only when asked. */
export function RestoreBackupCard() {
  const { db } = useShop();
  const { locale } = useFormat();
  const fileId = useId();
  const { work, run, cancel } = useWork();
  const [looked, setLooked] = useState<Looked | null>(null);
  const [settings, setSettings] = useState(false);
  const [done, setDone] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const stopped = (text: string): void => setRefused(`${text} Nothing was changed.`);

  const look = (file: File) =>
    run(async (signal, tell) => {
      setLooked(null);
      setDone(null);
      setRefused(null);
      const preview = await previewBackup(db, file, {
        signal,
        onProgress: ({ doneBytes, ofBytes }) =>
          tell({ step: "Reading and checking", share: doneBytes / ofBytes }),
      });
      if ("code" in preview) return stopped(notABackupWords(preview));
      setSettings((await db.entries.limit(1).primaryKeys()).length === 0);
      setLooked({ file, preview });
    }, stopped);

  const join = ({ file }: Looked) =>
    run(async (signal, tell) => {
      const restored = await restoreBackup(db, file, {
        settings,
        signal,
        onProgress: ({ doneBytes, ofBytes }) => tell({ step: "Restoring", share: doneBytes / ofBytes }),
      });
      if (!restored.ok)
        return stopped(
          restored.why.code === "out-of-space"
            ? "This device has no room left for it. Free some space and try again."
            : notABackupWords(restored.why),
        );
      setLooked(null);
      const { added, already, photos } = restored;
      setDone(
        `${entriesWords(added, locale)} added, ${entriesWords(already, locale)} here already, ${photosWords(photos, locale)} added.`,
      );
    }, stopped);

  return (
    <Card title="Restore or check a backup">
      <p>New entries in the file are added; nothing here is lost. You see its contents first.</p>
      <label className={`${sheet["stack1"]} ${sheet["firm"]} ${settingsCss["file"]}`} htmlFor={fileId}>
        Choose a backup file
        <input
          id={fileId}
          type="file"
          accept=".zip,.json,application/zip,application/json"
          disabled={work !== null}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = "";
            if (file !== undefined) void look(file);
          }}
        />
      </label>
      {work !== null && <WorkBar work={work} onCancel={cancel} />}
      {work === null && looked !== null && (
        <>
          <p role="status">
            <strong>{isSound(looked.preview) ? "This backup is sound." : "This backup is damaged."}</strong>
          </p>
          <PreviewFacts preview={looked.preview} />
          <Tick
            label="Settings and half-written forms too"
            ticked={settings}
            onChange={(ticked) => setSettings(ticked)}
          />
          <div className={css["keys"]}>
            <Button kind="primary" onPress={() => join(looked)}>
              {`Add ${entriesWords(looked.preview.entries.fresh, locale)} and ${photosWords(looked.preview.photos.fresh, locale)}`}
            </Button>
            <Button onPress={() => setLooked(null)}>Close it</Button>
          </div>
        </>
      )}
      {done !== null && <p role="status">{done}</p>}
      {refused !== null && (
        <p role="alert" className={`${sheet["breaks"]} ${sheet["alert"]}`}>
          {refused}
        </p>
      )}
    </Card>
  );
}
