import type { AirCsvPlan } from "../../../../workers/airCsv/airCsvPlan.ts";
export type ChangePlan = (changes: Partial<AirCsvPlan>, how?: { readonly saysOrder?: boolean }) => void;
