import type { Say, WordsOf } from "./findingSay.ts";
import { primeFindings as t } from "../words/primeFindings.ts";

const moved = (say: Say): string =>
  t["moved.theRoomWentFrom"]({ fromC: say.show("fromC"), toC: say.show("toC"), coat: say.show("coat") });
const movedTitle = t["movedTitle.roomTemperatureMovedOn"];
const lookClosely = t["lookClosely.checkEdgesAndFlats"];
const defects = t["defects.keepThisInMind"];

export const primeMovedWords: WordsOf<"prime-temperature-moved"> = {
  wax: (say) => ({
    title: movedTitle,
    says: t["primeMoved.wax.says"]({ moved: moved(say) }),
    remedy: t["primeMoved.wax.remedy"]({ lookClosely }),
  }),
  "not-known": (say) => ({
    title: movedTitle,
    says: t["primeMoved.not-known.says"]({ moved: moved(say) }),
    remedy: t["primeMoved.not-known.remedy"]({ lookClosely }),
  }),
  covered: (say) => ({ title: movedTitle, says: moved(say), remedy: defects }),
};

const hard = (say: Say): string =>
  t["hard.atAirCRhHumidity"]({
    airC: say.show("airC"),
    rh: say.show("rh"),
    coat: say.show("coat"),
    dropK: say.show("dropK"),
  });

export const primeHardWords: WordsOf<"prime-drying-hard"> = {
  wax: (say) => ({
    title: t["primeHard.wax.title"],
    says: t["primeHard.wax.says"]({ hard: hard(say) }),
    remedy: t["primeHard.wax.remedy"],
  }),
  "not-known": (say) => ({
    title: t["primeHard.not-known.title"],
    says: t["primeHard.not-known.says"]({ hard: hard(say) }),
    remedy: t["primeHard.not-known.remedy"],
  }),
  covered: (say) => ({
    title: t["primeHard.covered.title"],
    says: hard(say).replace(" is ", " was "),
    remedy: defects,
  }),
};

const bare = (say: Say, how: string): string =>
  t["bare.primeCoatCoatHow"]({
    coat: say.show("coat"),
    how,
    bareH: say.show("bareH"),
    limitH: say.show("limitH"),
  });

export const primeBareWords: WordsOf<"prime-left-bare"> = {
  bare: (say) => ({
    title: t["primeBare.bare.title"],
    says: bare(say, t["primeBare.bare.says"]),
    remedy: t["primeBare.bare.remedy"],
  }),
  "was-bare": (say) => ({
    title: t["primeBare.was-bare.title"],
    says: bare(say, t["primeBare.was-bare.says"]),
    remedy: defects,
  }),
};

export const stuccoFindingWords: WordsOf<"stucco-out-of-order"> = {
  "coarse-first": (say) => ({
    title: t["stuccoFinding.coarse-first.title"],
    says: t["stuccoFinding.coarse-first.says"]({ stucco: say.text("stucco"), grainMm: say.show("grainMm") }),
    remedy: t["stuccoFinding.coarse-first.remedy"],
  }),
  "grade-skipped": (say) => ({
    title: t["stuccoFinding.grade-skipped.title"]({ coat: say.show("coat") }),
    says: t["stuccoFinding.grade-skipped.says"]({
      stucco: say.text("stucco"),
      under: say.text("under"),
      ratio: say.show("ratio"),
    }),
    remedy: t["stuccoFinding.grade-skipped.remedy"],
  }),
  finer: (say) => ({
    title: t["stuccoFinding.finer.title"]({ coat: say.show("coat") }),
    says: t["stuccoFinding.finer.says"]({ stucco: say.text("stucco"), under: say.text("under") }),
    remedy: t["stuccoFinding.finer.remedy"],
  }),
  "not-known": (say) => ({
    title: t["stuccoFinding.not-known.title"],
    says: t["stuccoFinding.not-known.says"]({ coats: say.coats("coats") }),
    remedy: t["stuccoFinding.not-known.remedy"],
  }),
};

const wrongOrMeant = t["wrongOrMeant.ifItWasLogged"];

export const recipeFindingWords: WordsOf<"recipe-not-followed"> = {
  "left-out": (say) => ({
    title: t["recipeFinding.left-out.title"],
    says: t["recipeFinding.left-out.says"]({ coats: say.coatsIn("which").toLowerCase() }),
    remedy: t["recipeFinding.left-out.remedy"],
  }),
  skipped: (say) => ({
    title: t["recipeFinding.skipped.title"],
    says: t["recipeFinding.skipped.says"]({ which: say.text("which") }),
    remedy: t["recipeFinding.skipped.remedy"],
  }),
  "other-kind": (say) => ({
    title: t["recipeFinding.other-kind.title"],
    says: `${say.coatsIn("which")}.`,
    remedy: wrongOrMeant,
  }),
  "other-stucco": (say) => ({
    title: t["recipeFinding.other-stucco.title"],
    says: `${say.coatsIn("which")}.`,
    remedy: wrongOrMeant,
  }),
  extra: (say) => ({
    title: t["recipeFinding.extra.title"],
    says: t["recipeFinding.extra.says"]({ coats: say.coatsIn("which") }),
    remedy: t["recipeFinding.extra.remedy"],
  }),
  "no-recipe": () => ({
    title: t["recipeFinding.no-recipe.title"],
    says: t["recipeFinding.no-recipe.says"],
    remedy: t["recipeFinding.no-recipe.remedy"],
  }),
};

export const sealWords: WordsOf<"no-seal-coat"> = {
  "left-out": () => ({
    title: t["seal.left-out.title"],
    says: t["seal.left-out.says"],
    remedy: t["seal.left-out.remedy"],
  }),
  "none-planned": () => ({
    title: t["seal.none-planned.title"],
    says: t["seal.none-planned.says"],
    remedy: t["seal.none-planned.remedy"],
  }),
};
