import type { CopiedTable } from "./writeBackup.ts";
import type { Manifest } from "./format.ts";

/** Why a line or a file of a backup can't be read. */
export type Unreadable =
  | "cut-off"
  | "checksum"
  | "not-json"
  | "missing"
  | "not-a-photo"
  | "binary-missing"
  /** A part of which each line is sound, and the whole is not what was written. */
  | "not-all-there";

/** A photo in a backup; its blob is made when it is asked for. */
export type FoundPhoto = {
  readonly id: string;
  readonly type: string;
  readonly bytes: number;
  readonly blob: () => Blob;
};

/** One thing in a backup, as far as it could be read; `place` counts lines from 1 over the whole backup. */
export type BackupItem =
  | { readonly kind: "line"; readonly place: number; readonly row: unknown; readonly mayBeAside: boolean }
  | { readonly kind: "bad-line"; readonly place: number; readonly why: Unreadable }
  | ({ readonly kind: "photo" } & FoundPhoto)
  | { readonly kind: "bad-photo"; readonly name: string; readonly why: Unreadable }
  | { readonly kind: "kept"; readonly table: CopiedTable; readonly row: unknown }
  | { readonly kind: "bad-kept"; readonly table: string; readonly why: Unreadable };

export type ReadProgress = { readonly doneBytes: number; readonly ofBytes: number };
export type ReadWork = {
  readonly onProgress?: ((progress: ReadProgress) => void) | undefined;
  /** Cancels: reading is then rejected with the signal's reason. */
  readonly signal?: AbortSignal | undefined;
};

export type BackupHead = {
  /** 1 for the JSON file of old, 2 for the zip. */
  readonly version: 1 | 2;
  readonly madeAt: number | null;
  readonly device: string | null;
  /** Null where it is lost or the backup is of version 1. */
  readonly manifest: Manifest | null;
  /** False where the end or the list of contents is lost: then it is read as far as it is sound. */
  readonly isWhole: boolean;
};

export type OpenBackup = {
  readonly head: BackupHead;
  readonly items: (work: ReadWork) => AsyncGenerator<BackupItem>;
};

/** A file that is no backup at all, or one this program is too old for. */
export type NotABackup =
  | { readonly code: "not-a-backup"; readonly found: string }
  | { readonly code: "newer-backup"; readonly version: number; readonly known: number };
