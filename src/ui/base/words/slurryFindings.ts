import { catalogue, params } from "./catalogue.ts";

export const slurryFindings = catalogue("slurry-findings", {
  "came.coatsCameFromBucket": params("{coats} came from “{bucket}” while {wereWords}."),
  "lookOver.checkTheseCoatsFor":
    "Check these coats for thin spots, runs and lifting, and measure the shell with a caliper.",
  "unfitBucket.unfit.title": "Dipped from an unfit slurry",
  "unfitBucket.unfit-accepted.title": "Dipped from an unfit slurry",
  "unfitBucket.unfit-accepted.says": params("{came} Reason given: {reason}."),
  "unfitBucket.watched.title": "Slurry slightly off at the dip",
  "unfitBucket.watched.remedy": "Keep this in mind if the casting shows a shell defect.",
  "unfitBucket.not-checked.title": "Slurry not checked that day",
  "unfitBucket.not-checked.says": params(
    "{coats}: no viscosity reading in the 12 hours before the dip ({bucket}).",
  ),
  "unfitBucket.not-checked.remedy": "Check the viscosity now and use it as the best guess.",
  "unfitBucket.never-read.title": "Slurry never checked",
  "unfitBucket.never-read.says": params(
    "{coats} came from “{bucket}”, which has no reading after {days} days of dipping.",
  ),
  "unfitBucket.never-read.remedy": "Check its viscosity and temperature before the next dip.",
});
