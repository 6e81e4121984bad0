import { catalogue } from "./catalogue.ts";

export const logTexts = catalogue("log-keys/log", {
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
});

export const logKeys = catalogue("log-keys", {
  "logGroups.coatsAndDryness": "Coats and dryness",
  "logGroups.cracksAndRepairs": "Cracks and repairs",
  "logGroups.fireAndMetal": "Fire and metal",
  "logGroups.resultAndNotes": "Result and notes",
});
