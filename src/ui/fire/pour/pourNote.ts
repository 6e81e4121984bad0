/** Stands in the note of a pour whose shell was not read as the metal came. */
export const heatEstimated = "shell heat at the metal estimated";
/** The same as older logs have it. */
const older = "shell at the metal: reckoned";

/** A pour's note: what a person wrote, and whether the shell's heat in it is an estimate. */
export function ofPourNote(note: string | undefined): {
  readonly words: string;
  readonly isEstimated: boolean;
} {
  const text = (note ?? "").trim();
  const mark = [heatEstimated, older].find((one) => text.endsWith(one));
  if (mark === undefined) return { words: text, isEstimated: false };
  return { words: text.slice(0, -mark.length).replace(/;\s*$/, "").trim(), isEstimated: true };
}

/** The note as the log keeps it; undefined for none. */
export function pourNote(words: string, isEstimated: boolean): string | undefined {
  const parts = [words.trim(), isEstimated ? heatEstimated : ""].filter((part) => part !== "");
  return parts.length === 0 ? undefined : parts.join("; ");
}
