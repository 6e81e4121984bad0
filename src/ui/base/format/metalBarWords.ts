import type { Say, WordsOf } from "./findingSay.ts";
import { metalFindings as t } from "../words/metalFindings.ts";
import { counts } from "../words/counts.ts";

export const patternInsideWords: WordsOf<"pattern-inside"> = {
  inside: () => ({
    title: t["patternInside.inside.title"],
    says: t["patternInside.inside.says"],
    remedy: t["patternInside.inside.remedy"],
  }),
  film: () => ({
    title: t["patternInside.film.title"],
    says: t["patternInside.film.says"],
    remedy: t["patternInside.film.remedy"],
  }),
};

export const residueWords: WordsOf<"burnout-residue"> = {
  residue: () => ({
    title: t["residue.residue.title"],
    says: t["residue.residue.says"],
    remedy: t["residue.residue.remedy"],
  }),
};

const dryIt = (say: Say): string =>
  t["dryIt.heatItHoldMinAt"]({
    holdMin: say.show("holdMin"),
    fromC: say.show("fromC"),
    toC: say.show("toC"),
  });

export const dampAgainWords: WordsOf<"shell-damp-again"> = {
  rinsed: (say) => ({
    title: t["dampAgain.rinsed.title"],
    says: t["dampAgain.rinsed.says"]({ ageWords: ageWords(say) }),
    remedy: dryIt(say),
  }),
  cold: (say) => ({
    title: t["dampAgain.cold.title"],
    says: t["dampAgain.cold.says"]({ ageWords: ageWords(say) }),
    remedy: dryIt(say),
  }),
};

/** Hours up to two days, then whole days. */
function ageWords(say: Say): string {
  if (!say.isKnown("ageH") || say.value("ageH") < 48) return say.show("ageH");
  return counts.days(Math.floor(say.value("ageH") / 24));
}
