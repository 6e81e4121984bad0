import type { EntryType } from "../../../logbook/entries/entry.ts";
import { logKeys as t, logTexts } from "../words/logKeys.ts";

/** What can be logged of a piece by hand, in the order it comes in a life, in words for a key. */
export const logGroups = [
  {
    name: t["logGroups.coatsAndDryness"],
    types: ["coat-dipped", "coat-redipped", "coat-skipped", "dryness-seen", "wall-measured"],
  },
  {
    name: t["logGroups.cracksAndRepairs"],
    types: ["crack-found", "crack-patched", "patch-dried", "wire-wrapped"],
  },
  {
    name: t["logGroups.fireAndMetal"],
    types: [
      "dewaxed",
      "burnout-started",
      "burnout-read",
      "burnout-ended",
      "shell-inspected",
      "shell-rinsed",
      "shell-fired",
      "shell-preheated",
      "metal-poured",
      "shell-knocked-out",
    ],
  },
  {
    name: t["logGroups.resultAndNotes"],
    types: ["piece-finished", "outcome-told", "note-written", "piece-moved", "piece-scrapped"],
  },
] as const satisfies readonly { readonly name: string; readonly types: readonly EntryType[] }[];

export type LoggedByHand = (typeof logGroups)[number]["types"][number];

export const logWords: Record<LoggedByHand, string> = logTexts;
