import type { Say, WordsOf } from "./findingSay.ts";
import { recoatFindings as t } from "../words/recoatFindings.ts";

/** How a maker finds out for himself whether a shell is dry. */

const isOne = (say: Say): boolean => say.list("which").length < 2;

const title = (say: Say, how: string): string =>
  isOne(say)
    ? t["title.coatCoatHowWhen"]({ coat: say.show("coat"), how, over: say.show("over") })
    : t["title.coatsHowUnderThe"]({ coats: say.coatsIn("which"), how });
const damp = (say: Say): string => title(say, isOne(say) ? t["damp.wasDamp"] : t["damp.wereDamp"]);

/** How long it hung and how wet it was; of several, the dampest. */
function hung(say: Say): string {
  const which = isOne(say) ? "It" : t["hung.theDampestWasCoat"]({ coat: say.show("coat") });
  const needed = say.isKnown("neededH")
    ? t["hung.andNeededAboutNeededH"]({ neededH: say.show("neededH") })
    : "";
  const then = say.saidThen();
  if (then !== "")
    return t["hung.whichHungStoodHneededThen"]({ which, stoodH: say.show("stoodH"), needed, saidThen: then });
  const left = say.isKnown("leftShare")
    ? t["hung.aboutLeftShareOfIts"]({ leftShare: say.show("leftShare") })
    : "";
  return t["hung.whichHungStoodHneededleft"]({ which, stoodH: say.show("stoodH"), needed, left });
}

const accepted = (say: Say): string => {
  if (say.list("accepted").length === 0) return "";
  return isOne(say)
    ? t["accepted.acceptedAtTheDip"]
    : t["accepted.acceptedAtTheDipAgain"]({ acceptedCoats: say.coatsIn("accepted").toLowerCase() });
};

const halved = (say: Say): string =>
  say.isKnown("usedMPa")
    ? t["halved.thatWeakensItIt"]({ usedMPa: say.show("usedMPa"), fullMPa: say.show("fullMPa") })
    : "";

const perhaps = (say: Say): string => {
  const then = say.saidThen();
  return then === "" ? perhapsHung(say) : `${perhapsHung(say)} ${then}`;
};

const perhapsHung = (say: Say): string => {
  const [which, over] = isOne(say)
    ? ["It", t["perhapsHung.theNextCoat"]]
    : [
        t["perhapsHung.coatCoat"]({ coat: say.show("coat") }),
        t["perhapsHung.coatOver"]({ over: say.show("over") }),
      ];
  if (!say.isKnown("neededH"))
    return t["perhapsHung.whichHungStoodHBefore"]({ which, stoodH: say.show("stoodH"), over });
  return say.value("stoodH") < say.value("neededH")
    ? t["perhapsHung.whichHungStoodHBeforeAgain"]({
        which,
        stoodH: say.show("stoodH"),
        over,
        neededH: say.show("neededH"),
      })
    : t["perhapsHung.whichHungStoodHBeforeAgainAgain"]({
        which,
        stoodH: say.show("stoodH"),
        over,
        neededH: say.show("neededH"),
      });
};

export const recoatedWords: WordsOf<"recoated-before-dry"> = {
  wet: (say) => ({
    title: damp(say),
    says: `${hung(say)}${accepted(say)}${halved(say)}`,
    remedy: t["recoated.wet.remedy"]({ weigh: say.weigh() }),
  }),
  maybe: (say) => ({
    title: title(say, t["recoated.maybe.title"]),
    says: `${perhaps(say)}${accepted(say)}`,
    remedy: t["recoated.maybe.remedy"]({ weigh: say.weigh() }),
  }),
  weak: (say) => ({
    title: isOne(say)
      ? t["recoated.weak.title"]({ over: say.show("over") })
      : t["recoated.weak.title.weakBondsOverCoats"]({ coats: say.coatsIn("which").toLowerCase() }),
    says: t["recoated.weak.says"]({ hung: hung(say), halved: halved(say) }),
    remedy: t["recoated.weak.remedy"],
  }),
  "dried-since": (say) => ({
    title: damp(say),
    says: t["recoated.dried-since.says"]({ hung: hung(say), accepted: accepted(say), halved: halved(say) }),
    remedy: t["recoated.dried-since.remedy"],
  }),
  unknown: (say) => ({
    title: t["recoated.unknown.title"],
    says: t["recoated.unknown.says"]({ coats: say.coatsIn("which") }),
    remedy: t["recoated.unknown.remedy"],
  }),
};
