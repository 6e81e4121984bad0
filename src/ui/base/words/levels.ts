import { catalogue } from "./catalogue.ts";

export const levelTexts = catalogue("levels/level", {
  hold: "hold",
  watch: "check",
  note: "note",
  clear: "OK",
});
