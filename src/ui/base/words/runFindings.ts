import { catalogue, params } from "./catalogue.ts";

export const limitsTexts = catalogue("run-findings/limits", {
  "thermal-stress": "stress in the shell",
  steam: "steam",
  quartz: "the quartz inversion",
  cristobalite: "the cristobalite inversion",
  decomposition: "smoke from the pattern",
  "heat-release": "heat from the burning pattern",
});

export const runFindings = catalogue("run-findings", {
  "runLimit.too-fast.title": "Heated or cooled too fast",
  "runLimit.too-fast.says": params("{when} from {fromC} to {toC}, where {limitKPerH} is the most ({when2})."),
  "runLimit.too-fast.says.rateKPerHOrMore": params("{rateKPerH} or more"),
  "runLimit.too-fast.says.tooFast": "Too fast",
  "runLimit.too-fast.says.limitOfThePlan": "limit of the plan",
  "runLimit.too-fast.remedy":
    "When it is cold, check every edge and the pour cup for cracks in good light, and log what you find.",
  "runLimit.no-drain.title": "Pattern had no time to run out",
  "runLimit.no-drain.says": params(
    "At most {heldMin} from {fromC} to {toC}; {neededMin} are usual. It burnt or swelled inside.",
  ),
  "runLimit.no-drain.remedy":
    "Check thick places for cracks and the inside for carbon. If it is grey, fire it again with air.",
  "runLimit.steam-short.title": "Water driven out too fast",
  "runLimit.steam-short.says": params("At most {heldMin} from {fromC} to {toC}; {neededMin} were needed."),
  "runLimit.steam-short.remedy": "Tap it all over: a hollow sound means coats have lifted.",
  "runLimit.hold-short.title": "Too short at the top of the firing",
  "runLimit.hold-short.says": params("At most {heldMin} at {atLeastC} or more; {neededMin} were needed."),
  "runLimit.hold-short.remedy": "Fire it again for the whole time, or count on half its strength.",
});
