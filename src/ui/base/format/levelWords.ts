import type { Level } from "../../../rules/finding.ts";
import { levelTexts } from "../words/levels.ts";

/** A shell's state in a word; a slurry's, in `healthWords`, is of the same family. */
export const levelWords: Readonly<Record<Level | "clear", string>> = levelTexts;
