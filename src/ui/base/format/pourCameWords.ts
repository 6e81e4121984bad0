import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { cameKeysTexts, cameTexts, pouredTexts, cameTitlesTexts, cameToDoTexts } from "../words/pourCame.ts";

/** How a pour came to its end, on its key. */
export const cameKeys: Readonly<Record<PourCame, string>> = cameKeysTexts;

/** The same of a shell, in the middle of a sentence. */
export const cameWords: Readonly<Record<PourCame, string>> = cameTexts;

/** What became of a piece at its pour. */
export const pouredWords: Readonly<Record<PourCame, string>> = pouredTexts;

/** What the log calls it. */
export const cameTitles: Readonly<Record<PourCame, string>> = cameTitlesTexts;

/** What to do now, safety first. Common practice, no source. */
export const cameToDo: Readonly<Record<Exclude<PourCame, "full">, string>> = cameToDoTexts;

/** Shells of one pour by how they came out: "1 full, 1 short". */
export function cameCounts(came: readonly PourCame[]): string {
  const kinds: readonly PourCame[] = ["full", "short", "leaked", "frozen", "stopped"];
  return kinds
    .map((kind) => ({ kind, count: came.filter((one) => one === kind).length }))
    .filter(({ count }) => count > 0)
    .map(({ kind, count }) => `${count} ${cameWords[kind]}`)
    .join(", ");
}
