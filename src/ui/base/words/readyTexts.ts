import { catalogue } from "./catalogue.ts";

export const reasonTexts = catalogue("ready/reason", {
  "no-readings": "no drying time yet: log the room's temperature and humidity",
  "air-too-damp": "no drying time: the room's air is too damp to dry it",
  condensing: "water is condensing on the shell: warm the piece or dry the air",
  frost: "the wet surface falls below 1 °C and the slurry freezes: move the piece to a warmer room",
  "beyond-forecast": "too far ahead to give a time",
  "before-log": "this coat is from before the log: its drying is not judged",
});

export const verdictTexts = catalogue("ready/verdict", {
  dry: "dry",
  maybe: "perhaps dry",
  wet: "wet",
  unknown: "not known",
});
