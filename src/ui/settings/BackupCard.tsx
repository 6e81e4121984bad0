import { useId, useState } from "react";
import { handOver } from "../../device/share.ts";
import { exportShop, importShop } from "../../storage/backup.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { backupName } from "./backupName.ts";
import { importWords } from "./importWords.ts";
import css from "./SettingsPage.module.css";

type Told = { readonly ok: boolean; readonly lines: readonly string[] };

const gone: Record<Awaited<ReturnType<typeof handOver>>, Told> = {
  shared: { ok: true, lines: ["Handed on. Keep it somewhere that is not this device."] },
  saved: { ok: true, lines: ["Saved with your downloads. Keep a copy somewhere that is not this device."] },
  dismissed: { ok: false, lines: ["Not saved: the sheet was closed."] },
  failed: {
    ok: false,
    lines: ["Not saved: the browser refused the file. Try another browser on this device."],
  },
};

/** The whole log out as one file, and back in: a backup joins what is there, nothing is ever overwritten. */
export function BackupCard() {
  const shop = useShop();
  const format = useFormat();
  const fileId = useId();
  const [told, setTold] = useState<Told | null>(null);
  const [busy, setBusy] = useState(false);

  const save = async () => {
    try {
      const moment = shop.moment();
      setTold(gone[await handOver({ blob: await exportShop(shop.db, moment), name: backupName(moment) })]);
    } catch (error) {
      setTold({ ok: false, lines: [`Not saved. ${error instanceof Error ? error.message : String(error)}`] });
    }
  };
  const load = async (file: File) => {
    setBusy(true);
    try {
      const result = await importShop(shop.db, file);
      setTold(
        result.ok
          ? { ok: true, lines: [`${entries(result.added)} added, ${entries(result.already)} here already.`] }
          : { ok: false, lines: result.problems.map((problem) => importWords(problem, format)) },
      );
    } catch (error) {
      setTold({ ok: false, lines: [error instanceof Error ? error.message : String(error)] });
    }
    setBusy(false);
  };

  return (
    <Card title="Backup">
      <p>
        One file with every entry and photo. Read back on this or another device it joins the log: what is new
        is added, what is there stays.
      </p>
      <div className={css["keys"]}>
        <Button onPress={save}>Save a backup</Button>
      </div>
      <label className={css["file"]} htmlFor={fileId}>
        Read a backup
        <input
          id={fileId}
          type="file"
          accept="application/json,.json"
          disabled={busy}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = "";
            if (file !== undefined) void load(file);
          }}
        />
      </label>
      {busy && <p role="status">Reading and checking…</p>}
      {told !== null && told.ok && <p role="status">{told.lines.join(" ")}</p>}
      {told !== null && !told.ok && (
        <div role="alert" className={css["refused"]}>
          <p>Nothing was changed.</p>
          <ul className={css["problems"]}>
            {told.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </Card>
  );
}

const entries = (count: number): string => (count === 1 ? "1 entry" : `${count} entries`);
