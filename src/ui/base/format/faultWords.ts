import type { Fault } from "../../../storage/entrySchema.ts";

/** Where a line can't be read, and why; without an end, so that it can stand in a sentence. */
export const faultWords = ({ found, field, expected }: Fault): string =>
  `found ${found}${field === "" ? "" : ` in ${field}`}, expected ${expected}`;
