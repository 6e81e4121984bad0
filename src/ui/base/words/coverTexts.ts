import { catalogue, params } from "./catalogue.ts";

export const coverStateTexts = catalogue("cover/coverState", {
  dry: "dry",
  check: "perhaps dry",
  drying: "drying",
  unknown: "not known",
});

export const byTexts = catalogue("cover/by", {
  air: "by the air",
  minimum: "by the air",
  touch: "by touch",
  steady: "by weight",
  target: "by weight",
  surface: "by surface temperature",
  resistance: "by resistance",
  fire: "by fire",
});

export const minimumTexts = catalogue("cover/minimum", {
  recipe: "the recipe's minimum",
  bucket: "the bucket's minimum",
  shop: "your minimum",
  starting: "the usual minimum",
});

export const coverTexts = catalogue("cover", {
  "rule.minimumNameClauseToSay": params("{minimumName} {clause} to {say}"),
  "rule.dryByTheAir": params("Dry by the air {at}; {until}."),
  "rule.dryDryBySay": params("Dry {dryBy}, {say}."),
  "rule.dryByTheAirAgain": params(" Dry by the air {at} at the latest."),
  "rule.noTimeCanBe": "No time can be given.",
  "rule.noDryingTimeWithout":
    "No drying time without a room reading: check it, and log the room's temperature and humidity.",
  "rule.noRoomReadingSentence": params("No room reading. {sentence}: check it then."),
  "rule.perhapsDrySinceSay": params("Perhaps dry since {say}: check it.{latest}"),
  "rule.sentenceCheckItThen": params("{sentence}: check it then.{latest}"),
  "rule.checkItFromSay": params("Check it from {say}.{latest}"),
  "touch.feltDryAtTime": params("Felt dry {atTime}"),
  "touch.feltATouchDoes": params("{felt}. A touch does not count here: weigh it."),
  "touch.feltTooEarlyTo": params("{felt}, too early to count: check it again."),
  "touch.feltCountsFromSoonTime": params("{felt}. Counts from {soonTime}: check it again then."),
  "coverWhen.drySinceSay": params("dry since {say}"),
  "coverWhen.drySinceSayDryBy": params("dry since {say}, {dryBy}"),
  "coverWhen.noTimeCanBe": "no time can be given",
  "coverWhen.drySayWhenMinimumName": params("dry {say}, when {minimumName} ends"),
  "coverWhen.drySayAtThe": params("; dry {say} at the latest"),
  "coverWhen.perhapsDrySinceSaylatest": params("perhaps dry since {say}{latest}"),
  "coverWhen.checkFromSaylatest": params("check from {say}{latest}"),
});
