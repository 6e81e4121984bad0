import { catalogue, params } from "./catalogue.ts";

export const stateTexts = catalogue("cracks/state", {
  open: "open",
  "patch-wet": "patched, patch not yet dry",
  "patch-dry": "patched, patch dry",
});

export const kindTexts = catalogue("cracks/kind", {
  hairline: "hairline crack",
  open: "open crack",
  chip: "chip",
  lift: "lifted coat",
});

export const crackTexts = catalogue("cracks", {
  "crackState.patchedACoatOver": "patched, a coat over it",
  "crackState.patchedDriedByFire": "patched, dried by fire",
  "crackState.wordsInAPart": params("{words}, in a part that is trimmed off"),
  "cracks.noCrack": "no crack",
});
