import type { Phase } from "../../../logbook/piece/piece.ts";

export const phaseWords: Record<Phase, string> = {
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
};
