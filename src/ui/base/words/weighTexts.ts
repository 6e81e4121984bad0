import { catalogue, params } from "./catalogue.ts";

export const missingTexts = catalogue("weigh/missing", {
  air: "Log the room's temperature and humidity so a weighing can show it.",
  "damp-air": "The air is too damp to weigh for dryness. Bring it to 70% or less first.",
  area: "Enter the surface area, or weigh it once, so a weighing can show it.",
  "too-slow": "In this air a weighing takes more than a week. Blow air into its slowest place.",
});

export const weighTexts = catalogue("weigh", {
  "scale.aBalanceWordsScale": params("a {balanceWords} scale"),
  "when.atTime": params("at {time}"),
  "weigh.onScaleWords": params("on {scaleWords}"),
  "weigh.weighItNowAnd": params("Weigh it now and again {at} {on}: the same weight then means dry."),
  "weigh.weighItAgainNow": params("Weigh it again now {on}: the same weight means dry."),
  "weigh.weighItAgainAt": params("Weigh it again {at} {on}: the same weight then means dry."),
  "weigh.saysScaleWordsCanShow": params("{says} {scaleWords} can show it {finer}."),
});
