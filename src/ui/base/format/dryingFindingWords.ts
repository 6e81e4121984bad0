import type { Say, WordsOf } from "./findingSay.ts";

const lastTitle = "Last coat not dry for fire";
const outerFilm = (say: Say): string =>
  say.text("touched") === "" ? "" : " It felt dry: a hand feels the outer film only.";

export const lastCoatWords: WordsOf<"last-coat-damp"> = {
  hours: (say) => ({
    title: lastTitle,
    says: `${say.text("shell")}: ${say.show("hours")} since the ${say.text("kind")} dip end ${say.time("dryAt")}.${outerFilm(say)}`,
    remedy: `Wait, or weigh it. ${say.weigh()}`,
  }),
  air: (say) => ({
    title: lastTitle,
    says: `${say.isKnown("dryAt") ? `By the air it is dry ${say.time("dryAt")} at the latest` : "By the air it takes more than two weeks"} (slowest place: ${say.text("place")}).${outerFilm(say)}`,
    remedy: `Wait, or weigh it. ${say.weigh()}`,
  }),
  "damp-air": (say) => ({
    title: lastTitle,
    says: say.isKnown("dryAt")
      ? `The room is above ${say.show("damp")} until ${say.time("dryAt")}: the shell keeps water in that air.`
      : `The room stays above ${say.show("damp")}: the shell keeps water in that air.`,
    remedy: "Dry the room's air, log a new reading, then wait.",
  }),
  "air-too-damp": (say) => ({
    title: lastTitle,
    says: `The room's air is too damp to dry coat ${say.show("coat")}.`,
    remedy: "Dry the room's air, log a new reading, then wait.",
  }),
  condensing: (say) => ({
    title: lastTitle,
    says: `Water condenses on coat ${say.show("coat")}.`,
    remedy: "Warm the shell or dry the room's air, log a new reading, then wait.",
  }),
  frost: (say) => ({
    title: lastTitle,
    says: `The room is too cold: coat ${say.show("coat")} would freeze before it is dry.`,
    remedy: "Move it to a warmer room, or heat this one, and log a reading there.",
  }),
  unknown: (say) => ({
    title: "Last coat not known to be dry for fire",
    says: `No room reading goes with coat ${say.show("coat")} and nothing was measured.${outerFilm(say)}`,
    remedy: "Log the room's temperature and humidity, or weigh it twice.",
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
