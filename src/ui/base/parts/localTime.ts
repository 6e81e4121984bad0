import { lightFormat } from "date-fns/lightFormat";

/** The moment as a date-time field wants it, in the device's own zone: "2026-03-04T18:40". */
export const localText = (at: number): string => lightFormat(at, "yyyy-MM-dd'T'HH:mm");

/** The moment a date-time field gives, or null while it is half filled. */
export function readLocalText(text: string): number | null {
  const at = new Date(text).getTime();
  return Number.isNaN(at) ? null : at;
}
