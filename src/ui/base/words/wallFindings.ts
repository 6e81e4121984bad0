import { catalogue, params } from "./catalogue.ts";

export const wallFindings = catalogue("wall-findings", {
  "halved.itsStrengthIsReduced": params(" Its strength is reduced: damp under the next coat, {dampCoats}."),
  "range.likelyMmLowMmToHighMm": params("{likelyMm} ({lowMm} to {highMm})"),
  "wall.theShellIsRange": params("The shell is {range}. {needs}.{halved}"),
  "measure.measureTheRealThickness":
    "Measure the real thickness with a caliper on a broken edge of the cup or sprue, and log it.",
  "add.orWhenpart": params("Or {when}{part}"),
  "thinWall.fails.title": "Shell expected to break in this pour",
  "thinWall.fails.remedy": params("No metal in it as it stands. {add} {measure}"),
  "thinWall.thin.title": "Shell too thin for this pour",
  "thinWall.thin.remedy": params("Expect cracks. {add} {measure}"),
  "thinWall.marginal.title": "Shell borderline for this pour",
  "thinWall.marginal.remedy": params("{add} Sand packed round it catches a leak. {measure}"),
  "thinWall.below-floor.title": "Shell thinner than the recipe's minimum",
  "thinWall.below-floor.says": params(
    "The shell is {likelyMm}; the recipe wants at least {floorMm} for handling and burnout.",
  ),
  "thinWall.below-floor.remedy": params(
    "Add a coat, or handle it with care and support it in the kiln. {measure}",
  ),
  "thinWall.plan-short.title": "Your recipe gives too thin a shell",
  "thinWall.plan-short.says": params("Your recipe gives {range}. {needs}.{halved}"),
  "thinWall.plan-below-floor.title": "Your recipe stays below its own minimum",
  "thinWall.plan-below-floor.says": params("Your recipe gives {likelyMm}; its minimum is {floorMm}."),
  "thinWall.plan-below-floor.remedy": "Add a backup coat.",
  "missing.theAlloy": "the alloy",
  "missing.chooseTheAlloyIts": "Choose the alloy: its weight presses on the shell.",
  "missing.theHead": "the head",
  "missing.standThePieceAs":
    "Stand the piece as it will be poured. Measure straight up from its lowest point to the lip of the cup: the head.",
  "missing.theWeakestPartOf": "the weakest part of the shell",
  "missing.measureTheWidestFlat":
    "Measure the widest flat both ways with a ruler, or across the thickest round.",
  "missing.theCoats": "the coats",
  "missing.logTheCoatsThat": "Log the coats that are on it, or measure the shell with a caliper at the cup.",
  "missing.says": params("Not entered: {list}."),
  "cannotJudge.missing.title": "Shell strength not known",
  "cannotJudge.will-be-missing.title": "Not enough entered to check the shell",
});
