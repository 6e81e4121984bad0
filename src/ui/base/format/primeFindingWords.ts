import type { Say, WordsOf } from "./findingSay.ts";

const moved = (say: Say): string =>
  `The room went from ${say.show("fromC")} to ${say.show("toC")} while prime coat ${say.show("coat")} was bare.`;
const movedTitle = "Room temperature moved on a bare prime";
const lookClosely = "Check edges and flats for hairline cracks and lifting before the next coat.";
const defects = "Keep this in mind if the casting shows fins or scabs.";

export const primeMovedWords: WordsOf<"prime-temperature-moved"> = {
  wax: (say) => ({
    title: movedTitle,
    says: `${moved(say)} Wax grows and shrinks far more than the coat on it.`,
    remedy: `Keep the room steady. ${lookClosely}`,
  }),
  "not-known": (say) => ({
    title: movedTitle,
    says: `${moved(say)} A wax pattern moves far more than the coat on it.`,
    remedy: `Enter the pattern's material. ${lookClosely}`,
  }),
  covered: (say) => ({ title: movedTitle, says: moved(say), remedy: defects }),
};

const hard = (say: Say): string =>
  `At ${say.show("airC")}, ${say.show("rh")} humidity and with a fan on it, prime coat ${say.show("coat")} is ${say.show("dropK")} colder than the room.`;

export const primeHardWords: WordsOf<"prime-drying-hard"> = {
  wax: (say) => ({
    title: "Prime dries too fast",
    says: `${hard(say)} The wax shrinks with it and grows back under the set coat.`,
    remedy: "Take the fan off until the prime is dry, or bring the air to 60–70% humidity.",
  }),
  "not-known": (say) => ({
    title: "Prime dries too fast",
    says: `${hard(say)} A wax pattern shrinks with it.`,
    remedy: "Enter the pattern's material. With wax, take the fan off until the prime is dry.",
  }),
  covered: (say) => ({
    title: "Prime dried too fast",
    says: hard(say).replace(" is ", " was "),
    remedy: defects,
  }),
};

const bare = (say: Say, how: string): string =>
  `Prime coat ${say.show("coat")} ${how} for ${say.show("bareH")}; ${say.show("limitH")} is the usual limit.`;

export const primeBareWords: WordsOf<"prime-left-bare"> = {
  bare: (say) => ({
    title: "Prime left bare too long",
    says: bare(say, "has been bare"),
    remedy: "Check for cracks and lifting, blow off dust, mist or prewet it, then dip the next coat.",
  }),
  "was-bare": (say) => ({
    title: "Prime was left bare too long",
    says: bare(say, "was bare"),
    remedy: defects,
  }),
};

export const stuccoFindingWords: WordsOf<"stucco-out-of-order"> = {
  "coarse-first": (say) => ({
    title: "Coarse stucco on the first prime",
    says: `${say.text("stucco")} has grains up to ${say.show("grainMm")}, which print through into the metal.`,
    remedy: "Expect a rough face. Start the next piece with a finer stucco.",
  }),
  "grade-skipped": (say) => ({
    title: `A stucco grade skipped at coat ${say.show("coat")}`,
    says: `${say.text("stucco")} lies straight on ${say.text("under")}, ${say.show("ratio")} times as coarse. Such grains bridge and leave voids.`,
    remedy: "Tap that coat for hollow spots. On the next piece put an intermediate stucco between.",
  }),
  finer: (say) => ({
    title: `Finer stucco at coat ${say.show("coat")}`,
    says: `${say.text("stucco")} lies on the coarser ${say.text("under")}.`,
    remedy: "Nothing to repair. If it was logged wrong, correct the coat.",
  }),
  "not-known": (say) => ({
    title: "Stucco not known",
    says: `For ${say.coats("coats")} no stucco is logged, so the shell thickness is a guess.`,
    remedy: "Correct the coat and enter its stucco.",
  }),
};

const wrongOrMeant = "If it was logged wrong, correct it. If it was meant, change the recipe.";

export const recipeFindingWords: WordsOf<"recipe-not-followed"> = {
  "left-out": (say) => ({
    title: "Coats of the recipe are missing",
    says: `Neither dipped nor skipped with a reason: ${say.coatsIn("which").toLowerCase()} of the recipe.`,
    remedy: "Dip them, or log each as skipped with the reason.",
  }),
  skipped: (say) => ({
    title: "Coats of the recipe skipped",
    says: `Skipped: step ${say.text("which")} of the recipe. The shell is thinner for it.`,
    remedy: "Check the shell thickness; a caliper shows the real one.",
  }),
  "other-kind": (say) => ({
    title: "Other kind of coat than in the recipe",
    says: `${say.coatsIn("which")}.`,
    remedy: wrongOrMeant,
  }),
  "other-stucco": (say) => ({
    title: "Other stucco than in the recipe",
    says: `${say.coatsIn("which")}.`,
    remedy: wrongOrMeant,
  }),
  extra: (say) => ({
    title: "More coats than the recipe",
    says: `${say.coatsIn("which")}, beyond the recipe.`,
    remedy: "A thicker shell burns out and cools more slowly: give both more time.",
  }),
  "no-recipe": () => ({
    title: "No recipe chosen",
    says: "Without a recipe there is no count of coats to come.",
    remedy: "Choose a recipe for the piece, or write your own.",
  }),
};

export const sealWords: WordsOf<"no-seal-coat"> = {
  "left-out": () => ({
    title: "No seal coat",
    says: "All coats are on and none is a seal: loose grains fall in the kiln and into the pour cup.",
    remedy: "Dip it once more without stucco and let it dry.",
  }),
  "none-planned": () => ({
    title: "Recipe has no seal coat",
    says: "The last stucco stays open: loose grains fall in the kiln and into the pour cup.",
    remedy: "Brush off loose grains and keep the pour cup covered.",
  }),
};
