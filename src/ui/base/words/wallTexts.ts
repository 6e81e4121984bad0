import { catalogue, params, plural } from "./catalogue.ts";

export const wallNames = catalogue("wall/wall", {
  carries: "Carries this pour by the estimate",
  marginal: "Borderline for this pour",
  thin: "Too thin for this pour",
  fails: "Expected to break in this pour",
});

export const plannedWallTexts = catalogue("wall/plannedWall", {
  carries: "With its coats on it will carry this pour by the estimate",
  marginal: "With its coats on it will be borderline for this pour",
  thin: "With its coats on it will be too thin for this pour",
  fails: "Even with its coats on it would break in this pour",
});

export const wallMissingTexts = catalogue("wall/wallMissing", {
  alloy: "the alloy",
  head: "the head (lip of the cup down to the lowest part)",
  part: "the weakest part of the shell",
  coats: "the first coat",
});

export const strengthFromTexts = catalogue("wall/strengthFrom", {
  starting: "a starting value",
  recipe: "by the recipe",
  bars: "by your test bars",
  pours: "by what your shells of this recipe have held",
});

export const wallTexts = catalogue("wall", {
  "wallRange.showShowToShow": params("{show} ({show2} to {show3})"),
  "needed.neededByNeedsNeededMm": params("{neededBy} needs {neededMm}"),
  "beforeLog.coats": plural({
    one: "{count} coat went on before the log began; its thickness is estimated.",
    other: "{count} coats went on before the log began; their thickness is estimated.",
  }),
});
