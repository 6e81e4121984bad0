import type { LeftOut } from "../../../logbook/log/leftOut.ts";
import { fieldWords } from "./fieldWords.ts";
import type { Format } from "./units.ts";
import { dateFormat } from "./formatters.ts";
import { sentence } from "./sentence.ts";

/** A number the sums leave out, with what they take and what to do. */
export function leftOutWords({ at, key, value, low, high }: LeftOut, format: Format): string {
  const { name, quantity } = fieldWords(key);
  const day = dateFormat(format.locale, { day: "numeric", month: "long" }).format(at);
  const show = (figure: number): string => format.show(quantity, figure);
  return `${sentence(name)} ${show(value)} on ${day} is out of range (${show(low)} to ${show(high)}). Calculations leave it out. Correct or delete it.`;
}
