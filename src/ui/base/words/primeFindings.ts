import { catalogue, params } from "./catalogue.ts";

export const primeFindings = catalogue("prime-findings", {
  "moved.theRoomWentFrom": params("The room went from {fromC} to {toC} while prime coat {coat} was bare."),
  "movedTitle.roomTemperatureMovedOn": "Room temperature moved on a bare prime",
  "lookClosely.checkEdgesAndFlats":
    "Check edges and flats for hairline cracks and lifting before the next coat.",
  "defects.keepThisInMind": "Keep this in mind if the casting shows fins or scabs.",
  "primeMoved.wax.says": params("{moved} Wax grows and shrinks far more than the coat on it."),
  "primeMoved.wax.remedy": params("Keep the room steady. {lookClosely}"),
  "primeMoved.not-known.says": params("{moved} A wax pattern moves far more than the coat on it."),
  "primeMoved.not-known.remedy": params("Enter the pattern's material. {lookClosely}"),
  "hard.atAirCRhHumidity": params(
    "At {airC}, {rh} humidity and with a fan on it, prime coat {coat} is {dropK} colder than the room.",
  ),
  "primeHard.wax.title": "Prime dries too fast",
  "primeHard.wax.says": params("{hard} The wax shrinks with it and grows back under the set coat."),
  "primeHard.wax.remedy": "Take the fan off until the prime is dry, or bring the air to 60–70% humidity.",
  "primeHard.not-known.title": "Prime dries too fast",
  "primeHard.not-known.says": params("{hard} A wax pattern shrinks with it."),
  "primeHard.not-known.remedy":
    "Enter the pattern's material. With wax, take the fan off until the prime is dry.",
  "primeHard.covered.title": "Prime dried too fast",
  "bare.primeCoatCoatHow": params("Prime coat {coat} {how} for {bareH}; {limitH} is the usual limit."),
  "primeBare.bare.title": "Prime left bare too long",
  "primeBare.bare.says": "has been bare",
  "primeBare.bare.remedy":
    "Check for cracks and lifting, blow off dust, mist or prewet it, then dip the next coat.",
  "primeBare.was-bare.title": "Prime was left bare too long",
  "primeBare.was-bare.says": "was bare",
  "stuccoFinding.coarse-first.title": "Coarse stucco on the first prime",
  "stuccoFinding.coarse-first.says": params(
    "{stucco} has grains up to {grainMm}, which print through into the metal.",
  ),
  "stuccoFinding.coarse-first.remedy": "Expect a rough face. Start the next piece with a finer stucco.",
  "stuccoFinding.grade-skipped.title": params("A stucco grade skipped at coat {coat}"),
  "stuccoFinding.grade-skipped.says": params(
    "{stucco} lies straight on {under}, {ratio} times as coarse. Such grains bridge and leave voids.",
  ),
  "stuccoFinding.grade-skipped.remedy":
    "Tap that coat for hollow spots. On the next piece put an intermediate stucco between.",
  "stuccoFinding.finer.title": params("Finer stucco at coat {coat}"),
  "stuccoFinding.finer.says": params("{stucco} lies on the coarser {under}."),
  "stuccoFinding.finer.remedy": "Nothing to repair. If it was logged wrong, correct the coat.",
  "stuccoFinding.not-known.title": "Stucco not known",
  "stuccoFinding.not-known.says": params(
    "For {coats} no stucco is logged, so the shell thickness is a guess.",
  ),
  "stuccoFinding.not-known.remedy": "Correct the coat and enter its stucco.",
  "wrongOrMeant.ifItWasLogged": "If it was logged wrong, correct it. If it was meant, change the recipe.",
  "recipeFinding.left-out.title": "Coats of the recipe are missing",
  "recipeFinding.left-out.says": params("Neither dipped nor skipped with a reason: {coats} of the recipe."),
  "recipeFinding.left-out.remedy": "Dip them, or log each as skipped with the reason.",
  "recipeFinding.skipped.title": "Coats of the recipe skipped",
  "recipeFinding.skipped.says": params("Skipped: step {which} of the recipe. The shell is thinner for it."),
  "recipeFinding.skipped.remedy": "Check the shell thickness; a caliper shows the real one.",
  "recipeFinding.other-kind.title": "Other kind of coat than in the recipe",
  "recipeFinding.other-stucco.title": "Other stucco than in the recipe",
  "recipeFinding.extra.title": "More coats than the recipe",
  "recipeFinding.extra.says": params("{coats}, beyond the recipe."),
  "recipeFinding.extra.remedy": "A thicker shell burns out and cools more slowly: give both more time.",
  "recipeFinding.no-recipe.title": "No recipe chosen",
  "recipeFinding.no-recipe.says": "Without a recipe there is no count of coats to come.",
  "recipeFinding.no-recipe.remedy": "Choose a recipe for the piece, or write your own.",
  "seal.left-out.title": "No seal coat",
  "seal.left-out.says":
    "All coats are on and none is a seal: loose grains fall in the kiln and into the pour cup.",
  "seal.left-out.remedy": "Dip it once more without stucco and let it dry.",
  "seal.none-planned.title": "Recipe has no seal coat",
  "seal.none-planned.says":
    "The last stucco stays open: loose grains fall in the kiln and into the pour cup.",
  "seal.none-planned.remedy": "Brush off loose grains and keep the pour cup covered.",
});
