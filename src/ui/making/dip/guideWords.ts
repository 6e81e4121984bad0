import type { HoldPoint } from "../../../logbook/entries/pieceBodies.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import type { GuideStep } from "../../../logbook/dip/guide.ts";

/** What a step is called, and how it is done. Common practice, no source. */
export function guideStepWords(
  id: GuideStep["id"],
  kind: CoatKind,
): { readonly title: string; readonly says: string } {
  const isPrime = kind === "prime";
  switch (id) {
    case "look-over":
      return {
        title: "Look the shell over",
        says: "All round, with a lamp: cracks, lifting, thin edges, damp spots.",
      };
    case "piece-ready":
      return isPrime
        ? { title: "Piece ready", says: "Clean, at room temperature. No hollow may hold air." }
        : { title: "Piece ready", says: "Last coat dry. Mask on, then blow loose stucco off." };
    case "bucket-ready":
      return { title: "Bucket ready", says: "Stirred from the bottom, skimmed, viscosity in range." };
    case "prewet":
      return { title: "Prewet", says: "A short dip or spray of sol." };
    case "prewet-drain":
      return { title: "Let the sol drain", says: "No puddles in corners." };
    case "enter":
      return isPrime
        ? {
            title: "Dip it slowly",
            says: "At an angle, hollows mouth up. Then turn it under: air out, slurry in.",
          }
        : { title: "Dip it", says: "Slowly. Turn it under until no bubble comes." };
    case "bubbles":
      return isPrime
        ? {
            title: "Bubbles and bare spots",
            says: "Use a lamp. Blow or brush them out, then dip brushed spots again.",
          }
        : { title: "Bubbles", says: "Blow them out of the corners." };
    case "drain":
      return {
        title: "Drain",
        says: "Keep turning it and tip the corners, until it drips less than once in two seconds.",
      };
    case "wait":
      return {
        title: "Wait for the stucco",
        says: "Still wet and glossy. Too soon breaks through, too late won’t stick.",
      };
    case "stucco":
      return isPrime
        ? { title: "Stucco", says: "From all sides, recesses too." }
        : { title: "Stucco", says: "Until no wet spot is left." };
    case "after":
      return { title: "Tap off, wipe the cup rim", says: "Loose grains off, cup rim wiped bare." };
    case "dry":
      return { title: "Hang it to dry", says: "It is logged, and its drying time runs." };
  }
}

/** What is said yes to at a hold point. */
export const holdTicks: Readonly<Record<HoldPoint, string>> = {
  "prime-coverage": "No bubble, no bare wax",
  "after-second-coat": "Sound after two coats",
  "mid-shell": "Sound at half its thickness",
  "before-seal": "Sound, ready for the seal",
  "cup-rim": "The rim is clear",
};
