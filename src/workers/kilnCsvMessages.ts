import type { KilnCsv, KilnCsvOptions } from "./kilnCsv.ts";

export type KilnCsvJob = { readonly file: Blob; readonly options: KilnCsvOptions };

/** "failed": the file itself could not be read, as where it was moved or its card taken out. */
export type KilnCsvReply = { readonly says: "read"; readonly read: KilnCsv } | { readonly says: "failed" };
