import type { Say, WordsOf } from "./findingSay.ts";

const stood = (say: Say): string =>
  say.isKnown("neededH")
    ? `after ${say.show("stoodH")} of about ${say.show("neededH")}`
    : `after ${say.show("stoodH")}`;

const wetSays = (say: Say): string =>
  say.isKnown("leftShare")
    ? `Coat ${say.show("over")} went on ${stood(say)}; about ${say.show("leftShare")} of the water that had to leave coat ${say.show("coat")} was still in it.`
    : `Coat ${say.show("over")} went on ${stood(say)}; coat ${say.show("coat")} was not dry.`;

const wetTitle = (say: Say): string => `Coat ${say.show("over")} went over a damp coat`;
const wetRemedy = (say: Say): string =>
  `No more coats and no fire yet: let the shell dry right through. ${say.weigh()}`;
const maybeTitle = (say: Say): string => `Coat ${say.show("coat")} may have been damp`;
const maybeSays = (say: Say): string =>
  `Coat ${say.show("over")} went on ${stood(say)}, when coat ${say.show("coat")} was perhaps not dry.`;
const maybeRemedy = (say: Say): string => `Give the next drying more time. ${say.weigh()}`;

export const recoatedWords: WordsOf<"recoated-before-dry"> = {
  wet: (say) => ({ title: wetTitle(say), says: wetSays(say), remedy: wetRemedy(say) }),
  "wet-accepted": (say) => ({
    title: wetTitle(say),
    says: `${wetSays(say)} It was said before the tap and accepted.`,
    remedy: wetRemedy(say),
  }),
  maybe: (say) => ({ title: maybeTitle(say), says: maybeSays(say), remedy: maybeRemedy(say) }),
  "maybe-accepted": (say) => ({
    title: maybeTitle(say),
    says: `${maybeSays(say)} It was said before the tap and accepted.`,
    remedy: maybeRemedy(say),
  }),
  "dried-since": (say) => ({
    title: wetTitle(say),
    says: `${wetSays(say)} The shell has dried since; the seam between the two coats may stay weak.`,
    remedy: "Tap the shell and listen for a hollow place, and look for lifting, before it goes in the kiln.",
  }),
  weak: (say) => ({
    title: `Weak seam under coat ${say.show("over")}`,
    says: `${wetSays(say)} Fire has driven the water out; the seam between the two coats stays weak.`,
    remedy:
      "Look for flakes and hollow places before metal. More coats, or sand packed round it, back it up.",
  }),
  unknown: (say) => ({
    title: "Dryness between coats not known",
    says: `Of ${say.coats("coats")} the log can't tell whether it was dry when the next one went on: there are no room readings and nothing was felt or weighed.`,
    remedy: `Log a room reading at each dip. For this piece: ${say.weigh()}`,
  }),
};

const lastTitle = "Last coat not dry through";
const soon = (say: Say): string =>
  say.isKnown("likelyInH") && say.value("likelyInH") > 0 ? `${likelyIn(say)}${surelyIn(say)}` : surelyIn(say);
const likelyIn = (say: Say): string => {
  if (!say.isKnown("likelyInH")) return " No time can be given for it yet.";
  return say.value("likelyInH") > 0 ? ` Likely dry in ${say.show("likelyInH")}.` : "";
};
const surelyIn = (say: Say): string =>
  say.isKnown("lateInH") && say.value("lateInH") > 0 ? ` Almost surely in ${say.show("lateInH")}.` : "";
const waitAndWeigh = (say: Say): string =>
  `Keep it out of the kiln: steam breaks a damp wall. ${say.weigh()}`;

export const lastCoatWords: WordsOf<"last-coat-damp"> = {
  wet: (say) => ({
    title: lastTitle,
    says: say.isKnown("leftShare")
      ? `About ${say.show("leftShare")} of the water that has to leave coat ${say.show("coat")} is still in it.${likelyIn(say)}`
      : `Coat ${say.show("coat")} is still wet.${likelyIn(say)}`,
    remedy: waitAndWeigh(say),
  }),
  maybe: (say) => ({
    title: "Last coat perhaps not dry through",
    says: `Within the spread of the sum coat ${say.show("coat")} may be dry by now, or not.${soon(say)}`,
    remedy: `Wait for the late end, or find out now. ${say.weigh()}`,
  }),
  unknown: (say) => ({
    title: "Dryness of the last coat not known",
    says: `The log can't tell whether coat ${say.show("coat")} is dry: no room reading goes with it and nothing was felt or weighed.`,
    remedy: waitAndWeigh(say),
  }),
  "touch-only": (say) => ({
    title: "Last coat felt dry only at the skin",
    says: say.isKnown("leftShare")
      ? `It felt dry, but by the room's air about ${say.show("leftShare")} of the water is still inside coat ${say.show("coat")}.`
      : `Coat ${say.show("coat")} felt dry. How much water is inside it is not known.`,
    remedy: `Touch tells of the outer face alone. ${say.weigh()}`,
  }),
  "slow-place": (say) => ({
    title: "Its slowest place is not known dry",
    says: `The last coat counts as dry where the air reaches it. In the slower place of this piece, ${say.text("place")}, ${say.isKnown("leftShare") ? `about ${say.show("leftShare")} of the water that has to leave is still in it` : "it is not known"}.${likelyIn(say)}`,
    remedy: `Lead air into that place or hang it with the opening down, and wait. ${say.weigh()}`,
  }),
  "burnout-damp": (say) => ({
    title: "Burnout began on a damp shell",
    says: `Coat ${say.show("coat")} was not dry when the burnout was started.`,
    remedy:
      "Keep clear of the kiln's door. When it is cold, look over the whole shell for spalls, cracks and lifted flakes, and log each.",
  }),
  "burnout-unknown": (say) => ({
    title: "Burnout began, dryness not known",
    says: `The log can't tell whether coat ${say.show("coat")} was dry when the burnout was started.`,
    remedy: "When it is cold, look over the whole shell for spalls, cracks and lifted flakes, and log each.",
  }),
};

export const dampAirWords: WordsOf<"air-too-damp"> = {
  drying: (say) => ({
    title: "Air too damp to dry a coat",
    says: `The room stands at ${say.show("rh")}. Above ${say.show("limit")} a coat keeps its water, so no ready time is given.`,
    remedy: "Warm the room or run a dryer, close it off, then log a new reading.",
  }),
  final: (say) => ({
    title: "Air too damp for the last drying",
    says: `The room stands at ${say.show("rh")}. Above ${say.show("limit")} the shell keeps water in its pores, however long it hangs.`,
    remedy:
      "Keep it out of the kiln. Bring the air down first, log a new reading, then let it dry and weigh it.",
  }),
  "final-caution": (say) => ({
    title: "Damp air for the last drying",
    says: `The room stands at ${say.show("rh")}. Above ${say.show("limit")} a shell may keep some water in its pores.`,
    remedy: `Finish in drier air if you can. ${say.weigh()}`,
  }),
};

export const oldReadingWords: WordsOf<"air-reading-old"> = {
  old: (say) => ({
    title: "Room reading is old",
    says: `The last one is ${say.show("ageH")} old, and a coat is drying. The sum goes on with air that may have changed.`,
    remedy: "Read the thermometer and the hygrometer by the rack and log them.",
  }),
  none: () => ({
    title: "No room reading",
    says: "A coat is drying and nothing is known of the air round it, so no ready time can be given.",
    remedy: "Read the thermometer and the hygrometer by the rack and log them, with how the air moves.",
  }),
};
