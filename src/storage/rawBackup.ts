import { backupFormat, backupVersion } from "./backupFile.ts";
import { parseEntry } from "./entrySchema.ts";
import { toBase64 } from "./base64.ts";
import { openRaw, rawRows } from "./rawRows.ts";

export type RawBackup = {
  readonly blob: Blob;
  readonly name: string;
  readonly entries: number;
  readonly photos: number;
};

/**
 * A backup made from the store's own rows, without opening it as the app does. What can't be read as an entry goes
 * along as it lies there. `now` is epoch ms. Throws where there is no store, or none that answers.
 */
export async function rawBackup(storeName: string, now: number): Promise<RawBackup> {
  const db = await openRaw(storeName);
  if (db === null) throw new Error("There is no log in this browser.");
  try {
    const entries: string[] = [];
    const aside: string[] = [];
    for await (const rows of rawRows(db, "entries"))
      for (const row of rows) (parseEntry(row).ok ? entries : aside).push(JSON.stringify(row));
    const head = { format: backupFormat, version: backupVersion, madeAt: now };
    const parts: BlobPart[] = [
      `${JSON.stringify(head).slice(0, -1)},\n"entries":[\n`,
      new Blob([entries.join(",\n")]),
      `\n],"setAside":[\n${aside.join(",\n")}\n],"photos":[\n`,
    ];
    let photos = 0;
    for await (const rows of rawRows(db, "photos", { page: 1 }))
      for (const row of rows) {
        if (!isPhotoRow(row)) continue;
        const photo = { id: row.id, type: row.blob.type, data: await toBase64(row.blob) };
        parts.push(new Blob([photos === 0 ? "" : ",\n", JSON.stringify(photo)]));
        photos += 1;
      }
    const blob = new Blob([...parts, "\n]}\n"], { type: "application/json" });
    return { blob, name: `dipbook-${stamp(now)}.json`, entries: entries.length + aside.length, photos };
  } finally {
    db.close();
  }
}

const isPhotoRow = (row: unknown): row is { readonly id: string; readonly blob: Blob } =>
  typeof row === "object" &&
  row !== null &&
  "id" in row &&
  typeof row.id === "string" &&
  "blob" in row &&
  row.blob instanceof Blob;

const stamp = (now: number): string =>
  new Date(now).toISOString().slice(0, 16).replace("T", "-").replace(":", "");
