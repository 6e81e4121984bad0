const two = (n: number): string => String(n).padStart(2, "0");

/** The moment as a date-time field wants it, in the device's own zone: "2026-03-04T18:40". */
export function localText(at: number): string {
  const day = new Date(at);
  const date = `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
  return `${date}T${two(day.getHours())}:${two(day.getMinutes())}`;
}

/** The moment a date-time field gives, or null while it is half filled. */
export function readLocalText(text: string): number | null {
  const at = new Date(text).getTime();
  return Number.isNaN(at) ? null : at;
}
