import type { Say, WordsOf } from "./findingSay.ts";
import { dryingFindings as t } from "../words/dryingFindings.ts";

const lastTitle = t["lastTitle.lastCoatNotDry"];
const outerFilm = (say: Say): string => (say.text("touched") === "" ? "" : t["outerFilm.itFeltDryA"]);

export const lastCoatWords: WordsOf<"last-coat-damp"> = {
  hours: (say) => ({
    title: lastTitle,
    says: t["lastCoat.hours.says"]({
      shell: say.text("shell"),
      hours: say.show("hours"),
      kind: say.text("kind"),
      dryAt: say.time("dryAt"),
      outerFilm: outerFilm(say),
    }),
    remedy: t["lastCoat.hours.remedy"]({ weigh: say.weigh() }),
  }),
  air: (say) => ({
    title: lastTitle,
    says: t["lastCoat.air.says"]({
      when: say.isKnown("dryAt")
        ? t["lastCoat.air.says.byTheAirIt"]({ dryAt: say.time("dryAt") })
        : t["lastCoat.air.says.byTheAirItAgain"],
      place: say.text("place"),
      outerFilm: outerFilm(say),
    }),
    remedy: t["lastCoat.air.remedy"]({ weigh: say.weigh() }),
  }),
  "damp-air": (say) => ({
    title: lastTitle,
    says: say.isKnown("dryAt")
      ? t["lastCoat.damp-air.says"]({ damp: say.show("damp"), dryAt: say.time("dryAt") })
      : t["lastCoat.damp-air.says.theRoomStaysAbove"]({ damp: say.show("damp") }),
    remedy: t["lastCoat.damp-air.remedy"],
  }),
  "air-too-damp": (say) => ({
    title: lastTitle,
    says: t["lastCoat.air-too-damp.says"]({ coat: say.show("coat") }),
    remedy: t["lastCoat.air-too-damp.remedy"],
  }),
  condensing: (say) => ({
    title: lastTitle,
    says: t["lastCoat.condensing.says"]({ coat: say.show("coat") }),
    remedy: t["lastCoat.condensing.remedy"],
  }),
  frost: (say) => ({
    title: lastTitle,
    says: t["lastCoat.frost.says"]({ coat: say.show("coat") }),
    remedy: t["lastCoat.frost.remedy"],
  }),
  unknown: (say) => ({
    title: t["lastCoat.unknown.title"],
    says: t["lastCoat.unknown.says"]({ coat: say.show("coat"), outerFilm: outerFilm(say) }),
    remedy: t["lastCoat.unknown.remedy"],
  }),
  "burnout-damp": (say) => ({
    title: t["lastCoat.burnout-damp.title"],
    says: t["lastCoat.burnout-damp.says"]({ coat: say.show("coat") }),
    remedy: t["lastCoat.burnout-damp.remedy"],
  }),
  "burnout-unknown": (say) => ({
    title: t["lastCoat.burnout-unknown.title"],
    says: t["lastCoat.burnout-unknown.says"]({ coat: say.show("coat") }),
    remedy: t["lastCoat.burnout-unknown.remedy"],
  }),
};

export const dampAirWords: WordsOf<"air-too-damp"> = {
  drying: (say) => ({
    title: t["dampAir.drying.title"],
    says: t["dampAir.drying.says"]({ rh: say.show("rh"), limit: say.show("limit") }),
    remedy: t["dampAir.drying.remedy"],
  }),
  final: (say) => ({
    title: t["dampAir.final.title"],
    says: t["dampAir.final.says"]({ rh: say.show("rh"), limit: say.show("limit") }),
    remedy: t["dampAir.final.remedy"],
  }),
  "final-caution": (say) => ({
    title: t["dampAir.final-caution.title"],
    says: t["dampAir.final-caution.says"]({ rh: say.show("rh"), limit: say.show("limit") }),
    remedy: t["dampAir.final-caution.remedy"]({ weigh: say.weigh() }),
  }),
};

export const frostWords: WordsOf<"frost"> = {
  froze: (say) => ({
    title: t["frost.froze.title"],
    says: t["frost.froze.says"]({
      coat: say.show("coat"),
      surfaceC: say.show("surfaceC"),
      at: say.show("at"),
    }),
    remedy: t["frost.froze.remedy"],
  }),
  "will-freeze": (say) => ({
    title: t["frost.will-freeze.title"],
    says: t["frost.will-freeze.says"]({
      coat: say.show("coat"),
      surfaceC: say.show("surfaceC"),
      at: say.show("at"),
    }),
    remedy: t["frost.will-freeze.remedy"],
  }),
};

export const oldReadingWords: WordsOf<"air-reading-old"> = {
  old: (say) => ({
    title: t["oldReading.old.title"],
    says: t["oldReading.old.says"]({ ageH: say.show("ageH") }),
    remedy: t["oldReading.old.remedy"],
  }),
  none: () => ({
    title: t["oldReading.none.title"],
    says: t["oldReading.none.says"],
    remedy: t["oldReading.none.remedy"],
  }),
};
