import type { AirCsvPlan } from "./airCsv/airCsvPlan.ts";
import type { AirCsvGuess, GuessOptions } from "./airCsv/guessAirCsv.ts";
import type { PreviewRow } from "./airCsv/previewAirCsv.ts";
import type { AirCsvOptions, AirCsvProgress, AirCsvResult } from "./airCsv/readAirCsv.ts";

export type AirCsvJob =
  | { readonly do: "guess"; readonly file: Blob; readonly options: GuessOptions }
  | {
      readonly do: "preview";
      readonly file: Blob;
      readonly plan: AirCsvPlan;
      readonly options: { readonly nowMs: number; readonly mostRows: number };
    }
  | {
      readonly do: "read";
      readonly file: Blob;
      readonly plan: AirCsvPlan;
      readonly options: Pick<AirCsvOptions, "onBad" | "nowMs" | "storedS">;
    };

export type AirCsvReply =
  | { readonly says: "progress"; readonly progress: AirCsvProgress }
  | { readonly says: "guessed"; readonly guess: AirCsvGuess }
  | { readonly says: "previewed"; readonly rows: readonly PreviewRow[] }
  | { readonly says: "read"; readonly result: AirCsvResult }
  /** The file itself could not be read: it was moved, or its card taken out. */
  | { readonly says: "failed" };
