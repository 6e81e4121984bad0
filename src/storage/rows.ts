import type { Dexie, Table } from "dexie";
import type { ProjectionRow } from "./projection.ts";

/** A row of the log as it lies in the store: read through `parseEntry`, never rewritten. */
export type StoredEntry = {
  readonly id: string;
  readonly stream: string;
  readonly type: string;
  readonly at: number;
  readonly recordedAt: number;
};

export type PhotoRow = { readonly id: string; readonly blob: Blob };

export type KeyedRow = { readonly key: string; readonly value: unknown };

/** A mesh kept so that it opens at once: its file's hash, and what the page that shows it wants to find again. */
export type PatternRow = {
  readonly id: string;
  readonly name: string;
  readonly savedAt: number;
  /** Numbers, lists, blobs and buffers as the page gave them; the reader checks their shape. */
  readonly kept: unknown;
};

/** What a restore has put in so far, a row each, should it never come to its end. */
export type JournalRow =
  | { readonly key: string; readonly photoId: string }
  | { readonly key: string; readonly patternId: string }
  /** Settings and half-written forms, which come in with the entries and not before. */
  | { readonly key: string; readonly table: "settings" | "drafts"; readonly row: KeyedRow };

export type ShopDb = Dexie & {
  readonly entries: Table<StoredEntry, string>;
  readonly projections: Table<ProjectionRow, string>;
  readonly photos: Table<PhotoRow, string>;
  readonly settings: Table<KeyedRow, string>;
  readonly drafts: Table<KeyedRow, string>;
  readonly patterns: Table<PatternRow, string>;
  /** Entries of a backup on their way into the log. */
  readonly staged: Table<StoredEntry, string>;
  readonly journal: Table<JournalRow, string>;
};
