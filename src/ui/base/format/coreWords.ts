import type { WordsOf } from "./findingSay.ts";

export const coreLiftWords: WordsOf<"core-lift"> = {
  floats: (say) => ({
    title: "The core will float in this metal",
    says: `The metal lifts the core with ${say.show("liftN")}. Pins and neck hold ${say.show("holdN")}; they need ${say.show("needN")}.`,
    remedy: "Add pins, or thicker ones, or make the neck at the mouth wider. No metal in it before.",
  }),
  "not-known": (say) => ({
    title: "What holds the core is not entered",
    says: say.isKnown("liftN")
      ? `The metal lifts the core with ${say.show("liftN")}.`
      : "Its lift depends on the alloy, which is not entered.",
    remedy: "Add the alloy, and the pins or the mouth of the core, to the plan.",
  }),
};
