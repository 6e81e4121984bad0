import { catalogue, params } from "./catalogue.ts";

export const methodTexts = catalogue("checks/method", {
  touch: "Touch",
  colour: "Colour",
  "target-mass": "Weight against dry weight",
  "weight-loss": "Loss since the last weighing",
  approach: "How the weighings level off",
  surface: "Surface temperature",
  bag: "Bag test",
  resistance: "Resistance",
});

export const checkTexts = catalogue("checks", {
  "said.touch": params("felt {saw}: not dry yet"),
  "said.touch.feltDryAHand": "felt dry; a hand feels only the outer face",
  "said.colour": params("looked {saw}: not dry yet"),
  "said.colour.lookedDryColourShows": "looked dry; colour shows only the outer film",
  "said.target-mass": params(
    "{share} of all its water left, ± {share2}; dry weight {balanceWords}, ± {balanceWords2}",
  ),
  "said.weight-loss": params(
    "{clause} {balanceWords} in {duration}, of about {balanceWords2} of water in all",
  ),
  "said.approach": params(
    "its dry weight lies between {balanceWords} and {balanceWords2}, by the last {used} weighings",
  ),
  "said.surface": params("{share} of the way from wet to room temperature, ± {share2}; {surfaceSays}"),
  "said.resistance": params("{clause} times that of the coat just set: about {share} of all its water left"),
  "surfaceSays.atRoomTemperature": "at room temperature",
  "surfaceSays.nearlyDryStillA": "nearly dry, still a little cool",
  "surfaceSays.stillEvaporatingInside": "still evaporating inside",
  "surfaceSays.foundItCoversOnly": params("{found}. It covers only the outer face, not the slower places"),
  "bagSays.wet": "wet: the air in the bag was nearly saturated",
  "bagSays.losing": "still losing water",
  "bagSays.between": "little water left",
  "bagSays.dry": "dry: the bag stayed like the room",
  "unsaid.no-slurry": "drained, it weighed no more than before the dip: one of the two weights is wrong",
  "unsaid.stucco-lost": "it weighed less after the stucco than before: one of the two weights is wrong",
  "unsaid.balance-too-coarse": params(
    "the scale reads in steps of {balanceWords}; so little water needs {balanceWords2}",
  ),
  "unsaid.too-few": params("it takes {least} weighings to see them level off"),
  "unsaid.too-early": params("only {share} of the water was gone; it takes {share2}"),
  "unsaid.gaining": "it gained weight: something was added, or the scale drifted",
  "unsaid.not-slowing": "it still loses weight as fast as before",
  "unsaid.too-slow": params("it levels off too slowly to see in {duration}"),
  "unsaid.too-vague": "the weighings don't pin down the dry weight yet",
  "unsaid.too-soon": params("{duration} in the bag; it takes {duration2}"),
  "unsaid.too-soon.durationApartItTakes": params("{duration} apart; it takes {duration2}"),
  "unsaid.air-too-damp": params("does not work at {share} humidity; the room must be under {share2}"),
  "unsaid.signal-too-small": params(
    "a wet face would be only {dropK} colder than the air, and the error is {errorK}; compare it with a dry shell beside it",
  ),
  "unsaid.below-start": "less than half of the first reading: a contact slipped",
  "unsaid.lighter-than-dry": "lighter than the piece can be dry: stucco was shed, or a weight is wrong",
  "unsaid.heavier-than-wet": "heavier than it went on: a weight is wrong",
  "unsaid.more-than-its-water": params(
    "it lost {balanceWords}, more than the {balanceWords2} of water in it: stucco fell off, something was removed, or a weight is wrong",
  ),
  "unsaid.beyond-air": "warmer than the air: sun, a lamp, a hand, or it came from a warmer place",
  "unsaid.beyond-air.colderThanAWet":
    "colder than a wet face can be: it came from a colder place, or the room has changed",
  "unsaid.unsure": params(
    "it changed by {balanceWords}: too much to be the same weight, too little to count as a loss",
  ),
  "unsaid.lighter-than-later": params(
    "a later weighing was {balanceWords} heavier: this weight doesn't fit the others",
  ),
  "unsaid.no-air": "the room's air was not read",
  "unsaid.no-reference": "no reading of the coat just set to compare it with",
  "unsaid.out-of-range": "the number is out of range",
  "unsaid.no-water": "it needs the piece's surface area, or weights before the dip, drained and stuccoed",
  "unsaid.nothing-before": "it is the first weighing: there is nothing to compare it with",
});
