import { catalogue, params } from "./catalogue.ts";

export const phaseTexts = catalogue("phases/phase", {
  coating: "being coated",
  reviewed: "reviewed, ready for burnout",
  dewaxed: "dewaxed, ready for burnout",
  burnout: "in burnout",
  "burnt-out": "burnt out",
  fired: "fired",
  preheated: "preheated",
  poured: "poured",
  "knocked-out": "knocked out",
  finished: "finished",
  scrapped: "scrapped",
});

export const endTexts = catalogue("phases", {
  "end.cameOutResult": params("came out {result}"),
});
