import type { AirCsvResult } from "../../../../workers/airCsv/readAirCsv.ts";
import type { AirClass } from "../../../../trade/airClasses.ts";
export type FileResult = Extract<AirCsvResult, { ok: true }>;
export type FileQuestion = { readonly moves: AirClass | null };
