import type { Say, WordsOf } from "./findingSay.ts";

const weighTwice =
  "Weigh it twice, half an hour apart: it is dry when the weight stands still. Log what you find.";

const stood = (say: Say): string =>
  say.isKnown("neededH")
    ? `after ${say.show("stoodH")} of about ${say.show("neededH")}`
    : `after ${say.show("stoodH")}`;

const wetSays = (say: Say): string =>
  say.isKnown("leftShare")
    ? `Coat ${say.show("over")} went on ${stood(say)}; about ${say.show("leftShare")} of the water that had to leave coat ${say.show("coat")} was still in it.`
    : `Coat ${say.show("over")} went on ${stood(say)}; coat ${say.show("coat")} was not dry.`;

const wetTitle = (say: Say): string => `Coat ${say.show("over")} went over a damp coat`;
const wetRemedy = `No more coats and no fire yet: let the shell dry right through. ${weighTwice}`;
const maybeTitle = (say: Say): string => `Coat ${say.show("coat")} may have been damp`;
const maybeSays = (say: Say): string =>
  `Coat ${say.show("over")} went on ${stood(say)}, when coat ${say.show("coat")} was perhaps not dry.`;
const maybeRemedy = `Give the next drying more time. ${weighTwice}`;

export const recoatedWords: WordsOf<"recoated-before-dry"> = {
  wet: (say) => ({ title: wetTitle(say), says: wetSays(say), remedy: wetRemedy }),
  "wet-accepted": (say) => ({
    title: wetTitle(say),
    says: `${wetSays(say)} It was said before the tap and accepted.`,
    remedy: wetRemedy,
  }),
  maybe: (say) => ({ title: maybeTitle(say), says: maybeSays(say), remedy: maybeRemedy }),
  "maybe-accepted": (say) => ({
    title: maybeTitle(say),
    says: `${maybeSays(say)} It was said before the tap and accepted.`,
    remedy: maybeRemedy,
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
    remedy: `Log a room reading at each dip. For this piece: ${weighTwice.charAt(0).toLowerCase()}${weighTwice.slice(1)}`,
  }),
};

const lastTitle = "Last coat not dry for fire";
const outerFilm = (say: Say): string =>
  say.text("touched") === "" ? "" : " It felt dry: a hand feels the outer film only.";

export const lastCoatWords: WordsOf<"last-coat-damp"> = {
  hours: (say) => ({
    title: lastTitle,
    says: `${say.text("shell")}: ${say.show("hours")} since the ${say.text("kind")} dip end ${say.time("dryAt")}.${outerFilm(say)}`,
    remedy: "Wait, or weigh twice.",
  }),
  air: (say) => ({
    title: lastTitle,
    says: `${say.isKnown("dryAt") ? `By the air it is dry ${say.time("dryAt")} at the latest` : "By the air it takes more than two weeks"} (slowest place: ${say.text("place")}).${outerFilm(say)}`,
    remedy: "Wait, or weigh twice.",
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
    remedy: `Finish in drier air if you can. ${weighTwice}`,
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
