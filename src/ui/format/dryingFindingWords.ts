import type { Say, WordsOf } from "./findingSay.ts";


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
    says: `The room is at ${say.show("rh")} humidity. Above ${say.show("limit")} a coat stays wet.`,
    remedy: "Warm the room or run a dryer, keep it closed, then log a new reading.",
  }),
  final: (say) => ({
    title: "Air too damp for the final drying",
    says: `The room is at ${say.show("rh")} humidity. Above ${say.show("limit")} the shell keeps water in its pores.`,
    remedy: "Keep it out of the kiln. Dry the air, log a new reading, then let the shell dry and weigh it.",
  }),
  "final-caution": (say) => ({
    title: "Damp air for the final drying",
    says: `The room is at ${say.show("rh")} humidity. Above ${say.show("limit")} a shell may keep some water.`,
    remedy: `Finish in drier air if you can. ${say.weigh()}`,
  }),
};

export const frostWords: WordsOf<"frost"> = {
  froze: (say) => ({
    title: "Coat may have frozen while wet",
    says: `Coat ${say.show("coat")} may have frozen while wet: its wet surface fell to ${say.show("surfaceC")}, from ${say.show("at")}. Frozen slurry has no strength.`,
    remedy: "Thaw it in a warm room and look for flaking and lifted edges. Strip what lifts, or recoat.",
  }),
  "will-freeze": (say) => ({
    title: "Frost before this coat is dry",
    says: `The room's air will take the wet surface of coat ${say.show("coat")} to ${say.show("surfaceC")}, from ${say.show("at")}. A slurry that freezes wet has no strength.`,
    remedy: "Move the piece to a warmer room, or heat this one, and log a reading there.",
  }),
};

export const oldReadingWords: WordsOf<"air-reading-old"> = {
  old: (say) => ({
    title: "Room reading is old",
    says: `The last one is ${say.show("ageH")} old and a coat is drying, so its drying time may be off.`,
    remedy: "Log temperature and humidity.",
  }),
  none: () => ({
    title: "No room reading",
    says: "A coat is drying, and the room's temperature and humidity are not known.",
    remedy: "Log temperature, humidity and how the air moves.",
  }),
};
