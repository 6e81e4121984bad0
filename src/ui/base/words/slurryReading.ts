import { catalogue, params } from "./catalogue.ts";

export const slurryReading = catalogue("slurry-reading", {
  "viscosity.theKindOfCup": "The kind of cup is not known: compare these seconds only with this cup.",
  "viscosity.shownIsTooShort": params(
    "{shown} is too short for this cup. Use a cup with a smaller hole, or compare only with this one.",
  ),
  "viscosity.partToHighS": params("{part} to {highS}"),
  "viscosity.below": params(
    "Below the standard's range ({span}): {about} is an index only. Compare it only with readings from this cup.",
  ),
  "viscosity.above": params(
    "Above the standard's range ({span}): {about} is an index only. A cup with a wider hole reads better.",
  ),
  "viscosity.within": params(
    "About {about}, within the standard's range ({span}). Slurry thins as it is stirred: use it as an index in this shop.",
  ),
  "density.shownByInstrument": params("{shown}, by instrument"),
  "reading.inName": params(" in {name}"),
  "reading.pHPart": params("pH {part}"),
  "reading.lookedAtNotMeasured": "Looked at, not measured",
});
