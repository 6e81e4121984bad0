import type { Decimal } from "./airCsvPlan.ts";

const plain = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const grouped = /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;
const unitBehind = /\s*(?:°|º|˚)?\s*(?:[CFK]|%\s?(?:RH|rh)?|hPa|kPa|Pa|mbar|inHg|RH|rh)$/;

/**
 * A number as a logger writes it; null where it is none. A unit behind it is left out; so are the marks between
 * thousands, if they can't be taken for the decimal one.
 */
export function readNumber(text: string, decimal: Decimal): number | null {
  if (decimal === "." && plain.test(text)) return Number(text);
  const bare = text.trim().replace("−", "-").replace(unitBehind, "");
  const point = decimal === "." ? bare : swapMarks(bare);
  if (plain.test(point)) return Number(point);
  return grouped.test(point) ? Number(point.replaceAll(",", "")) : null;
}

const swapMarks = (text: string): string => text.replace(/[.,]/g, (mark) => (mark === "," ? "." : ","));

/** True for a number in either way of writing. */
export const looksLikeNumber = (text: string): boolean =>
  readNumber(text, ".") !== null || readNumber(text, ",") !== null;
