import type { Level } from "../../../rules/finding.ts";

/** A shell's state in a word; a slurry's, in `healthWords`, is of the same family. */
export const levelWords: Readonly<Record<Level | "clear", string>> = {
  hold: "hold",
  watch: "check",
  note: "note",
  clear: "OK",
};
