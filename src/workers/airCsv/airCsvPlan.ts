export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
export type Delimiter = "," | ";" | "\t" | "|" | " ";
export type Decimal = "." | ",";
export type DateOrder = "ymd" | "dmy" | "mdy";

export type TempUnit = "C" | "F";
export type RhUnit = "percent" | "fraction";
export type PressureUnit = "Pa" | "hPa" | "kPa" | "inHg";

/**
 * Where a line tells its time. Text may stand in one column, or date, time and am/pm in several, joined with a space.
 * `zone` is an IANA name, "UTC" or a fixed "+02:00"; an offset in the text itself goes before it. `order` is asked
 * only where the text leaves it open.
 */
export type TimeColumns =
  | { readonly kind: "epoch"; readonly column: number; readonly unit: "s" | "ms" }
  | {
      readonly kind: "text";
      readonly columns: readonly number[];
      readonly order: DateOrder;
      readonly zone: string;
    };

/**
 * How a logger's file is to be read. Columns count from 0, lines from 1. A guess fills it in, a person may change
 * any of it; what is null is not there, or not found yet.
 */
export type AirCsvPlan = {
  readonly encoding: Encoding;
  readonly delimiter: Delimiter;
  readonly decimal: Decimal;
  /** The first line with readings; what stands above it is head. */
  readonly firstLine: number;
  /** Names of the columns as the head tells them; "" where it does not. */
  readonly names: readonly string[];
  readonly time: TimeColumns | null;
  readonly temp: { readonly column: number; readonly unit: TempUnit } | null;
  readonly rh: { readonly column: number; readonly unit: RhUnit } | null;
  /** Stands in for a humidity that is not there. */
  readonly dew: { readonly column: number; readonly unit: TempUnit } | null;
  readonly pressure: { readonly column: number; readonly unit: PressureUnit } | null;
};

export type PlanGap = "time" | "temp" | "humidity";

/** What a plan still lacks before a file can be read with it. */
export function planGaps({ time, temp, rh, dew }: AirCsvPlan): readonly PlanGap[] {
  const gaps: PlanGap[] = [];
  if (time === null || (time.kind === "text" && time.columns.length === 0)) gaps.push("time");
  if (temp === null) gaps.push("temp");
  if (rh === null && dew === null) gaps.push("humidity");
  return gaps;
}
