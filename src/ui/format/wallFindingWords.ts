import type { Say, WordsOf } from "./findingSay.ts";

const wall = (say: Say): string =>
  `The wall is ${say.show("reachedMm")}. This head asks for about ${say.show("requiredMm")}, somewhere from ${say.show("requiredLowMm")} to ${say.show("requiredHighMm")}; safety factor ${say.show("safety")}.`;
const measure = "A caliper on a broken edge of the cup or sprue tells the real wall; log it.";
/** More coats than this are no longer a way out, but a sign to change the piece's attitude or shape. */
const mostCoats = 6;
const add = (say: Say): string =>
  say.value("coatsToAdd") > mostCoats
    ? "More coats alone won't do: lay it lower, rib or crown the flat, or divide the span."
    : `Add about ${say.coats("coatsToAdd")}, lower the head, or rib the flat.`;

export const thinWallWords: WordsOf<"wall-too-thin"> = {
  fails: (say) => ({
    title: "Wall expected to break under this head",
    says: wall(say),
    remedy: `No metal in it as it stands. ${add(say)} ${measure}`,
  }),
  thin: (say) => ({
    title: "Wall too thin for this head",
    says: wall(say),
    remedy: `Expect cracks. ${add(say)} ${measure}`,
  }),
  marginal: (say) => ({
    title: "Wall is marginal for this head",
    says: wall(say),
    remedy: `${add(say)} Sand packed round it catches a leak. ${measure}`,
  }),
  "below-floor": (say) => ({
    title: "Wall below the recipe's least",
    says: `The wall is ${say.show("reachedMm")}; the recipe wants ${say.show("floorMm")} at least, to be handled and burnt out.`,
    remedy: `Add a coat, or handle it with care and support it in the kiln. ${measure}`,
  }),
  "plan-short": (say) => ({
    title: "The recipe won't make the wall",
    says: `With the coats to come the wall will be about ${say.show("plannedMm")}; this head asks for about ${say.show("requiredMm")}. Safety factor ${say.show("safety")}.`,
    remedy: "Plan more or coarser backup coats, a lower head, or ribs on the flat, while there is time.",
  }),
  "plan-below-floor": (say) => ({
    title: "The recipe stays below its own least wall",
    says: `With the coats to come the wall will be about ${say.show("plannedMm")}; the least is ${say.show("floorMm")}.`,
    remedy: "Plan another backup coat.",
  }),
};

const missing: readonly (readonly [key: string, what: string, how: string])[] = [
  ["alloy", "the alloy", "Choose the alloy: its weight presses on the wall."],
  [
    "head",
    "the head",
    "Stand the piece as it will be poured and measure straight up from its lowest point to the lip of the cup: that is the head.",
  ],
  [
    "part",
    "the part that suffers most",
    "Find the widest flat and measure it both ways, or the thickest round and measure across it, with a ruler.",
  ],
  ["coats", "the coats", "Log the coats that are on it, or measure the wall with a caliper at the cup."],
];

export const cannotJudgeWords: WordsOf<"cannot-judge-wall"> = {
  missing: (say) => {
    const absent = missing.filter(([key]) => say.has(key));
    return {
      title: "Wall can't be judged",
      says: `Not known: ${absent.map(([, what]) => what).join(", ")}. Whether the wall bears the metal can't be told.`,
      remedy: absent.map(([, , how]) => how).join(" "),
    };
  },
};

const halved = (say: Say): string =>
  `A coat put on a damp one halves the strength reckoned with: ${say.show("usedMPa")} in place of ${say.show("fullMPa")}. The safety factor is ${say.show("usedSafety")} in place of ${say.show("fullSafety")}.`;

export const weakenedWords: WordsOf<"damp-recoat-weakens"> = {
  carries: (say) => ({
    title: "Strength halved for a damp coat",
    says: halved(say),
    remedy: "By the sum the wall still bears the head. Look for lifting and hollow places all the same.",
  }),
  short: (say) => ({
    title: "Strength halved for a damp coat",
    says: halved(say),
    remedy:
      "Add coats, lower the head, or pack it in sand. A broken test bar of your own tells the real strength.",
  }),
};
