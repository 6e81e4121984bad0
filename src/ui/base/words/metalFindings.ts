import { catalogue, params } from "./catalogue.ts";

export const metalFindings = catalogue("metal-findings", {
  "patternInside.inside.title": "Pattern still inside",
  "patternInside.inside.says":
    "The log has no dewax, burnout or firing of this shell. Metal on a pattern sprays out.",
  "patternInside.inside.remedy":
    "No metal in it. Dewax or burn it out and fire it; if that was done, log it.",
  "patternInside.film.title": "Wax film not burnt off",
  "patternInside.film.says":
    "It was dewaxed, and no fire since has burnt off the film of wax. Metal on wax sprays out.",
  "patternInside.film.remedy": "No metal in it. Burn it out or fire it with air, and log that.",
  "residue.residue.title": "Carbon or ash inside the shell",
  "residue.residue.says":
    "It was seen inside, and nothing since shows that it is gone. Carbon makes gas under metal. Ash stays in the face.",
  "residue.residue.remedy":
    "Grey or black: fire it again with air. White powder: blow it out cold. Then look inside and log that it is clean.",
  "dryIt.heatItHoldMinAt": params(
    "Heat it {holdMin} at {fromC} to {toC} before metal, cool pours too, and log the heat.",
  ),
  "dampAgain.rinsed.title": "Rinsed and not dried since",
  "dampAgain.rinsed.says": params("Water went through it {ageWords} ago. Metal on a damp shell sprays out."),
  "dampAgain.cold.title": "Fired, then cold for more than a day",
  "dampAgain.cold.says": params("Fired {ageWords} ago and cold since. Shells take up water from the air."),
});
