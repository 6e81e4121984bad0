import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";

/** How a pour came to its end, on its key. */
export const cameKeys: Readonly<Record<PourCame, string>> = {
  full: "Full",
  short: "Short",
  leaked: "Leaked",
  frozen: "Frozen in the cup",
  stopped: "Stopped",
};

/** The same of a shell, in the middle of a sentence. */
export const cameWords: Readonly<Record<PourCame, string>> = {
  full: "full",
  short: "short",
  leaked: "leaked",
  frozen: "frozen in the cup",
  stopped: "stopped",
};

/** What became of a piece at its pour. */
export const pouredWords: Readonly<Record<PourCame, string>> = {
  full: "poured",
  short: "poured short",
  leaked: "leaked at the pour",
  frozen: "froze in the cup at the pour",
  stopped: "pour stopped",
};

/** What the log calls it. */
export const cameTitles: Readonly<Record<PourCame, string>> = {
  full: "Metal poured",
  short: "Poured short",
  leaked: "Leaked at the pour",
  frozen: "Froze in the cup",
  stopped: "Pour stopped",
};

/** What to do now, safety first. Common practice, no source. */
export const cameToDo: Readonly<Record<Exclude<PourCame, "full">, string>> = {
  short: "Stand clear and leave it. Don't top it up: new metal spits on a frozen skin and does not join it.",
  leaked: "Step back and let it run into the sand. Never water. Nobody goes near until the metal is frozen.",
  frozen:
    "Leave the cup alone: metal under its skin can still be liquid. Don't poke it, don't tip the shell.",
  stopped: "Set the crucible down in its dry place. Stand clear: the metal in the shell is still liquid.",
};

/** Shells of one pour by how they came out: "1 full, 1 short". */
export function cameCounts(came: readonly PourCame[]): string {
  const kinds: readonly PourCame[] = ["full", "short", "leaked", "frozen", "stopped"];
  return kinds
    .map((kind) => ({ kind, count: came.filter((one) => one === kind).length }))
    .filter(({ count }) => count > 0)
    .map(({ kind, count }) => `${count} ${cameWords[kind]}`)
    .join(", ");
}
