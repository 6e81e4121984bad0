import type { Said, Unsaid } from "../../../logbook/drying/coatSaid.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";

/** By what something was found out, as the head of a line. */
export const methodWords: Readonly<Record<Said["by"], string>> = {
  touch: "Touch",
  colour: "Colour",
  "target-mass": "Weight against the dry mass",
  "weight-loss": "Loss since the weighing before",
  approach: "How the weighings level off",
  surface: "Surface temperature",
  bag: "Bag test",
  resistance: "Resistance",
};

/** A weight as finely as a balance tells it. */
export const balanceWords = (massG: number, format: Format): string =>
  `${format.number(format.toShown("g", massG), format.digits("g") + 1)}\u00a0${format.unit("g")}`;

const share = (value: number, format: Format): string =>
  format.show("percent", Math.min(1, Math.max(0, value)));

/** What one check said of the water left, with its error. */
export function saidWords(said: Said, format: Format): string {
  switch (said.by) {
    case "touch":
      if (said.saw !== "dry") return `felt ${said.saw}: not dry yet`;
      return "felt dry; a hand reads the outer face alone";
    case "colour":
      if (said.saw !== "dry") return `looked ${said.saw}: not dry yet`;
      return "looked dry; colour tells of the outer film alone";
    case "target-mass":
      return `${share(said.waterShare, format)} of all its water still in it, ± ${share(said.sdShare, format)}: dry it would weigh ${balanceWords(said.targetG, format)}, ± ${balanceWords(said.sdG, format)}`;
    case "weight-loss":
      return `${said.lossG < 0 ? "gained" : "lost"} ${balanceWords(Math.abs(said.lossG), format)} in ${duration(said.apartS * 1000)}, of about ${balanceWords(said.waterG, format)} of water in all`;
    case "approach":
      return `its dry mass lies between ${balanceWords(said.lowG, format)} and ${balanceWords(said.highG, format)}, by the last ${said.used} weighings`;
    case "surface":
      return `${share(said.index, format)} of the way from dripping to as warm as the air, ± ${share(said.indexSd, format)}; ${surfaceSays(said)}`;
    case "bag":
      return bagSays[said.says];
    case "resistance":
      return `${format.number(said.ratio, said.ratio < 10 ? 1 : 0)} times that of the coat just set: about ${share(said.waterShare, format)} of all its water still in it${said.says === "dry" ? ", which a shop may call dry once it has proved it" : ""}`;
  }
}

function surfaceSays({ says, outerFaceOnly }: Extract<Said, { by: "surface" }>): string {
  const found = {
    dry: "as good as the air's own",
    nearly: "the front has come to the bottom of the coat, but it still cools",
    wet: "water still leaves inside the coat",
  }[says];
  return outerFaceOnly
    ? `${found}. It reads only the outer face: of the slower places it says nothing`
    : found;
}

const bagSays = {
  wet: "wet: the air in the bag was all but full",
  losing: "still losing water",
  between: "little water left",
  dry: "dry: the bag stayed like the room",
} as const;

/** Why a check says nothing, and what would make it speak. */
export function unsaidWords(why: Unsaid, format: Format): string {
  switch (why.code) {
    case "no-slurry":
      return "drained it weighed no more than before the dip: one of the two weights is wrong";
    case "stucco-lost":
      return "it weighed less after the stucco than before: one of the two weights is wrong";
    case "balance-too-coarse":
      return `the balance tells ${balanceWords(why.balanceG, format)}; it would have to tell ${balanceWords(why.mostG, format)} for so little water`;
    case "too-few":
      return `${why.least} weighings are wanted before their levelling off can be read`;
    case "too-early":
      return `only ${share(why.goneShare, format)} of the water had gone; from ${share(why.leastShare, format)} on the weighings can be carried forward`;
    case "gaining":
      return "it gained weight: something was added, or the balance drifted";
    case "not-slowing":
      return "the loss does not slow down yet, so no end can be read from it";
    case "too-slow":
      return `it levels off more slowly than the ${duration(why.durationS * 1000)} watched`;
    case "too-vague":
      return "the weighings leave the dry mass too open";
    case "too-soon":
      return "baggedS" in why
        ? `${duration(why.baggedS * 1000)} in the bag; ${duration(why.leastS * 1000)} are wanted`
        : `${duration(why.apartS * 1000)} apart; ${duration(why.leastS * 1000)} are wanted`;
    case "air-too-damp":
      return `useless at ${share(why.rh, format)} humidity; the room must be under ${share(why.mostRh, format)}`;
    case "signal-too-small":
      return `a wet face would be only ${format.show("tempDiff", why.dropK)} colder than the air, and this is good to ${format.show("tempDiff", why.errorK)}; the difference to a dry shell beside it is finer`;
    case "below-start":
      return "less than half of the reading it is taken against: a contact slipped";
    case "lighter-than-dry":
      return "lighter than the piece can be dry: stucco was shed, or a weight is wrong";
    case "heavier-than-wet":
      return "heavier than it went on: a weight is wrong";
    case "more-than-its-water":
      return `it lost ${balanceWords(why.lossG, format)}, more than the ${balanceWords(why.waterG, format)} of water it went on with: grains fell, something was taken off, or a weight is wrong`;
    case "beyond-air":
      return why.isWarmer
        ? "warmer than the air: sun, a lamp, a hand, or a shell that came from a warmer place"
        : "colder than even a dripping face would be: it came from a colder place, or the room's reading no longer holds";
    case "unsure":
      return `it changed by ${balanceWords(Math.abs(why.lossG), format)}, too much to be the same and too little to be a loss`;
    case "lighter-than-later":
      return `a later weighing was ${balanceWords(why.gainG, format)} heavier: this weight doesn't fit the others`;
    case "no-air":
      return "the room's air was not read";
    case "no-reference":
      return "no reading of the coat just set to take it against";
    case "out-of-range":
      return "the number is out of range";
    case "no-water":
      return "it needs the piece's surface area, or weights before the dip, drained and stuccoed";
    case "nothing-before":
      return "it is the first weighing: there is nothing to compare it with";
  }
}
