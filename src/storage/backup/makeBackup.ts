import type { Manifest } from "./format.ts";
import type { BackupPreview } from "./previewBackup.ts";
import { isSound, previewBackup } from "./previewBackup.ts";
import type { ReadProgress } from "./items.ts";
import type { BackupWork } from "./writeBackup.ts";
import { writeBackup } from "./writeBackup.ts";

/** Where a backup is written; the file is given back as it then lies there. */
export type BackupSink = {
  readonly stream: WritableStream<Uint8Array>;
  readonly finish: () => Promise<Blob>;
  readonly discard: () => Promise<void>;
};

export type MadeBackup = {
  readonly file: Blob;
  readonly manifest: Manifest;
  /** The file read again through the gate of a restore, and found to be what was written. */
  readonly checked: BackupPreview | null;
};

/**
 * Writes a backup and reads the finished file back. `checked` is null where that did not give what was written: then
 * it is no backup. A failure or a cancel takes away what was written.
 */
export async function makeBackup(
  storeName: string,
  sink: BackupSink,
  { onCheck, ...work }: BackupWork & { readonly onCheck?: ((progress: ReadProgress) => void) | undefined },
): Promise<MadeBackup> {
  try {
    const manifest = await writeBackup(storeName, sink.stream, work);
    const file = await sink.finish();
    const read = await previewBackup(null, file, { onProgress: onCheck, signal: work.signal });
    return { file, manifest, checked: "code" in read || !isWritten(read) ? null : read };
  } catch (error) {
    await sink.discard().catch(() => undefined);
    throw error;
  }
}

/** Lines the store itself could not read go along unread: they are no fault of the file. */
function isWritten(read: BackupPreview): boolean {
  const { bad } = read.entries;
  const ofTheStore = bad.filter(({ why }) => why === "fault");
  return isSound({
    ...read,
    entries: { ...read.entries, bad: bad.filter((one) => !ofTheStore.includes(one)) },
  });
}
