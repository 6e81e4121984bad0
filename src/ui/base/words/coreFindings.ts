import { catalogue, params } from "./catalogue.ts";

export const coreFindings = catalogue("core-findings", {
  "coreLift.floats.title": "The core will float in this metal",
  "coreLift.floats.says": params(
    "The metal lifts the core with {liftN}. Pins and neck hold {holdN}; they need {needN}.",
  ),
  "coreLift.floats.remedy":
    "Add pins, or thicker ones, or make the neck at the mouth wider. No metal in it before.",
  "coreLift.not-known.title": "What holds the core is not entered",
  "coreLift.not-known.says": params("The metal lifts the core with {liftN}."),
  "coreLift.not-known.says.itsLiftDependsOn": "Its lift depends on the alloy, which is not entered.",
  "coreLift.not-known.remedy": "Add the alloy, and the pins or the mouth of the core, to the plan.",
});
