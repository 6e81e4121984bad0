import type { EntryType } from "../../../logbook/entries/entry.ts";

/** What can be logged of a piece by hand, in the order it comes in a life, in words for a key. */
export const logGroups = [
  {
    name: "Coats and dryness",
    types: ["coat-dipped", "coat-redipped", "coat-skipped", "dryness-seen", "wall-measured"],
  },
  { name: "Cracks and repairs", types: ["crack-found", "crack-patched", "patch-dried", "wire-wrapped"] },
  {
    name: "Fire and metal",
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
    name: "Result and notes",
    types: ["piece-finished", "outcome-told", "note-written", "piece-moved", "piece-scrapped"],
  },
] as const satisfies readonly { readonly name: string; readonly types: readonly EntryType[] }[];

export type LoggedByHand = (typeof logGroups)[number]["types"][number];

export const logWords: Record<LoggedByHand, string> = {
  "coat-dipped": "A coat",
  "coat-redipped": "Same coat again",
  "coat-skipped": "Skip a coat",
  "dryness-seen": "Dryness",
  "wall-measured": "Caliper reading",
  "crack-found": "Crack found",
  "crack-patched": "Crack repaired",
  "patch-dried": "Repair is dry",
  "wire-wrapped": "Wire wrapped",
  dewaxed: "Dewaxed",
  "burnout-started": "Burnout starts",
  "burnout-read": "Kiln reading",
  "burnout-ended": "Burnout ends",
  "shell-inspected": "Looked inside",
  "shell-rinsed": "Rinsed with water",
  "shell-fired": "Shell fired",
  "shell-preheated": "Preheated",
  "metal-poured": "Metal poured",
  "shell-knocked-out": "Knocked out",
  "piece-finished": "Finishing",
  "outcome-told": "How it came out",
  "note-written": "A note",
  "piece-moved": "Move to a room",
  "piece-scrapped": "Scrap it",
};
