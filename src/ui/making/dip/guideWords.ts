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
        says: "All round, with a lamp: cracks, lifting, thin edges, damp patches.",
      };
    case "piece-ready":
      return isPrime
        ? { title: "Piece ready", says: "Clean, at room temperature, hung so that no hollow holds air." }
        : { title: "Piece ready", says: "Last coat dry. Blow loose stucco off first; mask on for the dust." };
    case "bucket-ready":
      return { title: "Bucket ready", says: "Stirred from the bottom, skimmed, seconds in the band." };
    case "prewet":
      return { title: "Prewet", says: "A short dip or spray of sol." };
    case "prewet-drain":
      return { title: "Let the sol drain", says: "No puddles in corners." };
    case "enter":
      return isPrime
        ? {
            title: "Dip it slowly",
            says: "At an angle, hollows mouth up, then turn it under: air out, slurry in.",
          }
        : { title: "Dip it", says: "Slowly, turned under until no bubble comes." };
    case "bubbles":
      return isPrime
        ? {
            title: "Bubbles and bare spots",
            says: "Blow or brush them out with a lamp; brushed spots are dipped again.",
          }
        : { title: "Bubbles", says: "Blow them out of the corners." };
    case "drain":
      return {
        title: "Drain",
        says: "Turn it all the while, tip the corners, until it drips slower than a drop in two seconds.",
      };
    case "wait":
      return {
        title: "Wait for the stucco",
        says: "Wet and glossy still: too soon breaks through, too late won’t hold.",
      };
    case "stucco":
      return isPrime
        ? { title: "Stucco", says: "Let it rain on from all sides, recesses too." }
        : { title: "Stucco", says: "Until no wet spot is left." };
    case "after":
      return { title: "Tap off, clear the cup rim", says: "Loose grains off, rim of the cup wiped bare." };
    case "dry":
      return { title: "Hang it to dry", says: "The log has it: its drying time runs." };
  }
}

/** What is said yes to at a hold point. */
export const holdTicks: Readonly<Record<HoldPoint, string>> = {
  "prime-coverage": "No bubble, no bare wax",
  "after-second-coat": "Sound after two coats",
  "mid-shell": "Sound at half its wall",
  "before-seal": "Sound, ready for the seal",
  "cup-rim": "The rim is clear",
};
