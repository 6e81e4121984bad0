import { catalogue, params } from "./catalogue.ts";

export const lackTexts = catalogue("slurry-advice/lack", {
  reading: "a viscosity reading since it was last changed",
  "slurry-temperature": "the slurry's temperature",
  "own-temperature": "its usual temperature",
  cup: "the kind of cup its target is for",
  band: "its viscosity range",
  "density-target": "its target density",
  flour: "its flour",
  volume: "its volume",
});

export const slurryAdvice = catalogue("slurry-advice", {
  "halves.addHalfStir15": "Add half, stir 15 minutes, check again, then add the rest.",
  "advice.bring-to-temperature.title": params("Bring it to {referenceC}"),
  "advice.bring-to-temperature.says": params(
    "It is at {slurryC}. At its target temperature it would read about {secondsThere}.",
  ),
  "advice.weigh-density.title": "Weigh its density",
  "advice.weigh-density.says":
    "Viscosity alone can't show whether it lost water or is gelling. Tap out the air and weigh a known volume.",
  "advice.leave-alone.title": "In range",
  "advice.leave-alone.says": "No change needed.",
  "advice.add-water.title": params("Add {waterL} of distilled water"),
  "advice.add-water.says": params("Thick and dense: water has evaporated. {halves}{expectedWords}"),
  "advice.do-not-thin.title": "Do not thin it",
  "advice.do-not-thin.says":
    "Too thick at the right density: it does not lack water. Look for cold, a dirty cup or gelling.",
  "advice.gel-test.title": "Do a gel test",
  "advice.gel-test.says": params(
    "Let some settle. Keep 20 mL of the clear binder in a closed vial at {60}, with fresh sol beside it. If it gels within a day, discard the slurry.",
  ),
  "advice.clean-and-check-cup.title": "Clean the cup and check again",
  "advice.clean-and-check-cup.says":
    "Dried silica in the hole reads thick; a worn hole reads thin. Check it against a second cup.",
  "advice.stir-and-read-again.title": "Stir it and check again",
  "advice.stir-and-read-again.says":
    "Flour settles. Stir from the bottom for 15 minutes before you add anything.",
  "advice.let-air-out-and-weigh-again.title": "Let the air out and weigh again",
  "advice.let-air-out-and-weigh-again.says":
    "Light but not thin: it holds air. Let the foam settle, tap the cup, weigh again.",
  "advice.weigh-liquor.title": "Check the binder density",
  "advice.weigh-liquor.says": "It shows how much binder and how much water are missing.",
  "advice.let-water-dry-off.title": params("Let {surplusWaterKg} of water evaporate"),
  "advice.let-water-dry-off.says":
    "It holds more water than its mix, and there is no stronger sol to add. Stir with the lid off, or blend in fresh slurry.",
  "advice.add-flour-and-binder.title": params("Add {partsWords}"),
  "advice.add-flour-and-binder.says": params(
    "Thin and light: too much water. Add liquids first, then the flour. {halves}{expectedWords}",
  ),
  "parts.kgOfName": params("{kg} of {name}"),
  "parts.listAndLast": params("{list} and {last}"),
  "expected.itShouldThenWeigh": params("It should then weigh {density}."),
  "expected.itShouldThenWeighAgain": params(
    "It should then weigh {density} and read about {likelyS} ({part} to {part2}).",
  ),
});
