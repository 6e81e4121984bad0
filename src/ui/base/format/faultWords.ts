import type { ParseFault } from "../../../storage/entrySchema.ts";

/** Where a line can't be read, and why; without an end, so that it can stand in a sentence. */
export const faultWords = ({ found, field, expected }: ParseFault): string =>
  `found ${found}${field === "" ? "" : ` in ${field}`}, expected ${expected}`;

/** As many lines that can't be read are named in a list; the rest is counted. */
export const mostUnreadNamed = 20;

/** A line of the log that can't be read, as a part of a sentence; null where the browser itself can't give it out. */
export const unreadLineWords = (fault: ParseFault | null): string =>
  fault === null
    ? "a line the browser can't give out"
    : fault.code === "newer-version"
      ? "a line of a newer Dipbook"
      : `a line, ${faultWords(fault)}`;
