import type { Said, Unsaid } from "../../../logbook/drying/coatSaid.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";

/** By what something was found out, as the head of a line. */
export const methodWords: Readonly<Record<Said["by"], string>> = {
  touch: "Touch",
  colour: "Colour",
  "target-mass": "Weight against dry weight",
  "weight-loss": "Loss since the last weighing",
  approach: "How the weighings level off",
  surface: "Surface temperature",
  bag: "Bag test",
  resistance: "Resistance",
};

/** A weight to one digit more than elsewhere, as a scale shows it. */
export const balanceWords = (massG: number, format: Format): string =>
  `${format.number(format.toShown("g", massG), format.digits("g") + 1)}\u00a0${format.unit("g")}`;

const share = (value: number, format: Format): string =>
  format.show("percent", Math.min(1, Math.max(0, value)));

/** What one check said of the water left, with its error. */
export function saidWords(said: Said, format: Format): string {
  switch (said.by) {
    case "touch":
      if (said.saw !== "dry") return `felt ${said.saw}: not dry yet`;
      return "felt dry; a hand feels only the outer face";
    case "colour":
      if (said.saw !== "dry") return `looked ${said.saw}: not dry yet`;
      return "looked dry; colour shows only the outer film";
    case "target-mass":
      return `${share(said.waterShare, format)} of all its water left, ± ${share(said.sdShare, format)}; dry weight ${balanceWords(said.targetG, format)}, ± ${balanceWords(said.sdG, format)}`;
    case "weight-loss":
      return `${said.lossG < 0 ? "gained" : "lost"} ${balanceWords(Math.abs(said.lossG), format)} in ${duration(said.apartS * 1000)}, of about ${balanceWords(said.waterG, format)} of water in all`;
    case "approach":
      return `its dry weight lies between ${balanceWords(said.lowG, format)} and ${balanceWords(said.highG, format)}, by the last ${said.used} weighings`;
    case "surface":
      return `${share(said.index, format)} of the way from wet to room temperature, ± ${share(said.indexSd, format)}; ${surfaceSays(said)}`;
    case "bag":
      return bagSays[said.says];
    case "resistance":
      return `${format.number(said.ratio, said.ratio < 10 ? 1 : 0)} times that of the coat just set: about ${share(said.waterShare, format)} of all its water left`;
  }
}

function surfaceSays({ says, outerFaceOnly }: Extract<Said, { by: "surface" }>): string {
  const found = {
    dry: "at room temperature",
    nearly: "nearly dry, still a little cool",
    wet: "still evaporating inside",
  }[says];
  return outerFaceOnly ? `${found}. It covers only the outer face, not the slower places` : found;
}

const bagSays = {
  wet: "wet: the air in the bag was nearly saturated",
  losing: "still losing water",
  between: "little water left",
  dry: "dry: the bag stayed like the room",
} as const;

/** Why a check can't be used, and what it needs. */
export function unsaidWords(why: Unsaid, format: Format): string {
  switch (why.code) {
    case "no-slurry":
      return "drained, it weighed no more than before the dip: one of the two weights is wrong";
    case "stucco-lost":
      return "it weighed less after the stucco than before: one of the two weights is wrong";
    case "balance-too-coarse":
      return `the scale reads in steps of ${balanceWords(why.balanceG, format)}; so little water needs ${balanceWords(why.mostG, format)}`;
    case "too-few":
      return `it takes ${why.least} weighings to see them level off`;
    case "too-early":
      return `only ${share(why.goneShare, format)} of the water was gone; it takes ${share(why.leastShare, format)}`;
    case "gaining":
      return "it gained weight: something was added, or the scale drifted";
    case "not-slowing":
      return "it still loses weight as fast as before";
    case "too-slow":
      return `it levels off too slowly to see in ${duration(why.durationS * 1000)}`;
    case "too-vague":
      return "the weighings don't pin down the dry weight yet";
    case "too-soon":
      return "baggedS" in why
        ? `${duration(why.baggedS * 1000)} in the bag; it takes ${duration(why.leastS * 1000)}`
        : `${duration(why.apartS * 1000)} apart; it takes ${duration(why.leastS * 1000)}`;
    case "air-too-damp":
      return `does not work at ${share(why.rh, format)} humidity; the room must be under ${share(why.mostRh, format)}`;
    case "signal-too-small":
      return `a wet face would be only ${format.show("tempDiff", why.dropK)} colder than the air, and the error is ${format.show("tempDiff", why.errorK)}; compare it with a dry shell beside it`;
    case "below-start":
      return "less than half of the first reading: a contact slipped";
    case "lighter-than-dry":
      return "lighter than the piece can be dry: stucco was shed, or a weight is wrong";
    case "heavier-than-wet":
      return "heavier than it went on: a weight is wrong";
    case "more-than-its-water":
      return `it lost ${balanceWords(why.lossG, format)}, more than the ${balanceWords(why.waterG, format)} of water in it: stucco fell off, something was removed, or a weight is wrong`;
    case "beyond-air":
      return why.isWarmer
        ? "warmer than the air: sun, a lamp, a hand, or it came from a warmer place"
        : "colder than a wet face can be: it came from a colder place, or the room has changed";
    case "unsure":
      return `it changed by ${balanceWords(Math.abs(why.lossG), format)}: too much to be the same weight, too little to count as a loss`;
    case "lighter-than-later":
      return `a later weighing was ${balanceWords(why.gainG, format)} heavier: this weight doesn't fit the others`;
    case "no-air":
      return "the room's air was not read";
    case "no-reference":
      return "no reading of the coat just set to compare it with";
    case "out-of-range":
      return "the number is out of range";
    case "no-water":
      return "it needs the piece's surface area, or weights before the dip, drained and stuccoed";
    case "nothing-before":
      return "it is the first weighing: there is nothing to compare it with";
  }
}
