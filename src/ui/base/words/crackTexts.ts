import { catalogue, params } from "./catalogue.ts";

export const stateTexts = catalogue("cracks/state", {
  open: "open",
  "patch-wet": "repaired, not yet dry",
  "patch-dry": "repaired, dry",
});

export const kindTexts = catalogue("cracks/kind", {
  hairline: "hairline crack",
  open: "open crack",
  chip: "chip",
  lift: "lifted coat",
});

export const crackTexts = catalogue("cracks", {
  "crackState.patchedACoatOver": "repaired, a coat over it",
  "crackState.patchedDriedByFire": "repaired, dried by fire",
  "crackState.wordsInAPart": params("{words}, in a part that is trimmed off"),
  "cracks.noCrack": "no crack",
});
