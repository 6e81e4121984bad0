import type { Say, WordsOf } from "./findingSay.ts";

export const patternInsideWords: WordsOf<"pattern-inside"> = {
  inside: () => ({
    title: "Pattern still inside",
    says: "The log has no dewax, burnout or firing of this shell. Metal on a pattern sprays out.",
    remedy: "No metal in it. Dewax or burn it out and fire it; if that was done, log it.",
  }),
  film: () => ({
    title: "Wax film not burnt off",
    says: "It was dewaxed, and no fire since has burnt off the film of wax. Metal on wax sprays out.",
    remedy: "No metal in it. Burn it out or fire it with air, and log that.",
  }),
};

export const residueWords: WordsOf<"burnout-residue"> = {
  residue: () => ({
    title: "Carbon or ash inside the shell",
    says: "It was seen inside, and nothing since shows that it is gone. Carbon makes gas under metal. Ash stays in the face.",
    remedy:
      "Grey or black: fire it again with air. White powder: blow it out cold. Then look inside and log that it is clean.",
  }),
};

const dryIt = (say: Say): string =>
  `Heat it ${say.show("holdMin")} at ${say.show("fromC")} to ${say.show("toC")} before metal, cool pours too, and log the heat.`;

export const dampAgainWords: WordsOf<"shell-damp-again"> = {
  rinsed: (say) => ({
    title: "Rinsed and not dried since",
    says: `Water went through it ${ageWords(say)} ago. Metal on a damp shell sprays out.`,
    remedy: dryIt(say),
  }),
  cold: (say) => ({
    title: "Fired, then cold for more than a day",
    says: `Fired ${ageWords(say)} ago and cold since. Shells take up water from the air.`,
    remedy: dryIt(say),
  }),
};

/** Hours up to two days, then whole days. */
function ageWords(say: Say): string {
  if (!say.isKnown("ageH") || say.value("ageH") < 48) return say.show("ageH");
  return `${Math.floor(say.value("ageH") / 24)} days`;
}
