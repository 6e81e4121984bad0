import type { Say, WordsOf } from "./findingSay.ts";

const moved = (say: Say): string =>
  `While prime coat ${say.show("coat")} was the outer one the room went from ${say.show("fromC")} to ${say.show("toC")}, ${say.show("swingK")} in all; ${say.show("limitK")} is the usual limit.`;
const movedTitle = "Room temperature moved on a bare prime";
const lookClosely = "Look over edges and flats for hair cracks and lifting before the next coat.";

export const primeMovedWords: WordsOf<"prime-temperature-moved"> = {
  wax: (say) => ({
    title: movedTitle,
    says: `${moved(say)} Wax grows and shrinks far more than the coat on it.`,
    remedy: `Hold the room steady day and night. ${lookClosely}`,
  }),
  "not-known": (say) => ({
    title: movedTitle,
    says: `${moved(say)} What the pattern is made of is not known; wax would move far more than the coat on it.`,
    remedy: `Log the pattern's material. ${lookClosely}`,
  }),
  "not-wax": (say) => ({
    title: movedTitle,
    says: `${moved(say)} Plastic moves four to six times less than wax.`,
    remedy: lookClosely,
  }),
  covered: (say) => ({
    title: movedTitle,
    says: `${moved(say)} It is covered now.`,
    remedy: "If the casting shows fins or scabs, think of this first.",
  }),
};

const hard = (say: Say): string =>
  `At ${say.show("airC")} and ${say.show("rh")} with a fan on it, wet prime coat ${say.show("coat")} cools ${say.show("dropK")} below the room; ${say.show("limitK")} is a fair limit.`;
const hardTitle = "Prime dries too hard";

export const primeHardWords: WordsOf<"prime-drying-hard"> = {
  wax: (say) => ({
    title: hardTitle,
    says: `${hard(say)} The wax shrinks with it and grows back under a set coat.`,
    remedy: "Take the fan off the piece until the prime is dry, or bring the air to 60–70% humidity.",
  }),
  "not-known": (say) => ({
    title: hardTitle,
    says: `${hard(say)} What the pattern is made of is not known; wax would shrink with it.`,
    remedy: "Log the pattern's material. With wax, take the fan off until the prime is dry.",
  }),
  covered: (say) => ({
    title: "Prime dried hard",
    says: hard(say),
    remedy: "Look for hair cracks and lifting; if the casting shows fins or scabs, think of this first.",
  }),
};

const bare = (say: Say): string =>
  `Prime coat ${say.show("coat")} has hung bare for ${say.show("bareH")}; ${say.show("limitH")} is the usual limit.`;

export const primeBareWords: WordsOf<"prime-left-bare"> = {
  bare: (say) => ({
    title: "Prime left bare",
    says: bare(say),
    remedy: "Look for cracks and lifting, blow off dust, mist or prewet it, then give it the next coat.",
  }),
  "was-bare": (say) => ({
    title: "Prime was left bare",
    says: bare(say).replace("has hung", "hung"),
    remedy: "If the casting shows fins or lifted skin, think of this.",
  }),
};

export const stuccoWords: WordsOf<"stucco-out-of-order"> = {
  "coarse-first": (say) => ({
    title: "Coarse stucco on the first prime",
    says: `${say.text("stucco")} has grains up to ${say.show("grainMm")}. On the first prime they print through into the metal.`,
    remedy: "Expect a rough face. On the next piece start with a finer cut.",
  }),
  "grade-skipped": (say) => ({
    title: `A grade of stucco skipped at coat ${say.show("coat")}`,
    says: `${say.text("stucco")} lies straight on ${say.text("under")}, ${say.show("ratio")} times as coarse. Such grains bridge and leave hollows.`,
    remedy: "Look for hollow places under that coat. On the next piece put an intermediate cut between.",
  }),
  finer: (say) => ({
    title: `Finer stucco at coat ${say.show("coat")}`,
    says: `${say.text("stucco")} lies on the coarser ${say.text("under")}.`,
    remedy: "Nothing to mend. If it was logged wrong, correct the coat.",
  }),
  "not-known": (say) => ({
    title: "Stucco not known",
    says: `Of ${say.coats("coats")} the log names no stucco from the table, so its order can't be told.`,
    remedy: "Correct the coat and name its stucco; the wall is reckoned from it too.",
  }),
};

export const recipeWords: WordsOf<"recipe-not-followed"> = {
  "left-out": (say) => ({
    title: "Coats of the recipe are missing",
    says: `Not on the piece and not skipped in words: recipe place ${say.text("which")}.`,
    remedy: "Put them on, or log each as skipped with the reason.",
  }),
  skipped: (say) => ({
    title: "Coats of the recipe skipped",
    says: `Skipped: recipe place ${say.text("which")}.`,
    remedy: "See what it does to the wall; a caliper reading tells the real one.",
  }),
  "other-kind": (say) => ({
    title: "Other kind of coat than the recipe's",
    says: `Coat ${say.text("which")}.`,
    remedy: "If it was logged wrong, correct it; if it was meant, change the recipe.",
  }),
  "other-stucco": (say) => ({
    title: "Other stucco than the recipe's",
    says: `Coat ${say.text("which")}.`,
    remedy: "If it was logged wrong, correct it; if it was meant, change the recipe.",
  }),
  extra: (say) => ({
    title: "More coats than the recipe",
    says: `Beyond the recipe: coat ${say.text("which")}.`,
    remedy: "A thicker wall burns out and cools more slowly; reckon with it.",
  }),
  "no-recipe": () => ({
    title: "No recipe chosen",
    says: "There is nothing to hold the coats against, and no count of coats to come.",
    remedy: "Choose a recipe for the piece, or write your own.",
  }),
};

export const sealWords: WordsOf<"no-seal-coat"> = {
  "left-out": () => ({
    title: "No seal coat",
    says: "The coats are done and none of them is a seal: loose grains fall in the kiln and into the cup.",
    remedy: "Give it a dip of slurry without stucco and let it dry.",
  }),
  "none-planned": () => ({
    title: "Recipe has no seal coat",
    says: "The last stucco lies open: loose grains fall in the kiln and into the cup.",
    remedy: "Brush off what is loose, and keep the cup covered.",
  }),
};
