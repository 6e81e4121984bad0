import type { Say, WordsOf } from "./findingSay.ts";

/** How a maker finds out for himself whether a shell is dry. */

const isOne = (say: Say): boolean => say.list("which").length < 2;

const title = (say: Say, how: string): string =>
  isOne(say)
    ? `Coat ${say.show("coat")} ${how} when you dipped coat ${say.show("over")}`
    : `${say.coatsIn("which")} ${how} under the next coat`;
const damp = (say: Say): string => title(say, isOne(say) ? "was damp" : "were damp");

/** How long it hung and how wet it was; of several, the dampest. */
function hung(say: Say): string {
  const which = isOne(say) ? "It" : `The dampest was coat ${say.show("coat")}: it`;
  const needed = say.isKnown("neededH") ? ` and needed about ${say.show("neededH")}` : "";
  const then = say.saidThen();
  if (then !== "") return `${which} hung ${say.show("stoodH")}${needed}. ${then}`;
  const left = say.isKnown("leftShare") ? `; about ${say.show("leftShare")} of its water was left` : "";
  return `${which} hung ${say.show("stoodH")}${needed}${left}.`;
}

const accepted = (say: Say): string => {
  if (say.list("accepted").length === 0) return "";
  return isOne(say)
    ? " Accepted at the dip."
    : ` Accepted at the dip: ${say.coatsIn("accepted").toLowerCase()}.`;
};

const halved = (say: Say): string =>
  say.isKnown("usedMPa")
    ? ` That weakens it: it counts with ${say.show("usedMPa")} in place of ${say.show("fullMPa")}.`
    : "";

const perhaps = (say: Say): string => {
  const then = say.saidThen();
  return then === "" ? perhapsHung(say) : `${perhapsHung(say)} ${then}`;
};

const perhapsHung = (say: Say): string => {
  const [which, over] = isOne(say)
    ? ["It", "the next coat"]
    : [`Coat ${say.show("coat")}`, `coat ${say.show("over")}`];
  if (!say.isKnown("neededH")) return `${which} hung ${say.show("stoodH")} before ${over}.`;
  return say.value("stoodH") < say.value("neededH")
    ? `${which} hung ${say.show("stoodH")} before ${over}; about ${say.show("neededH")} was needed.`
    : `${which} hung ${say.show("stoodH")} before ${over}; about ${say.show("neededH")} is likely, but it can take longer.`;
};

export const recoatedWords: WordsOf<"recoated-before-dry"> = {
  wet: (say) => ({
    title: damp(say),
    says: `${hung(say)}${accepted(say)}${halved(say)}`,
    remedy: `No more coats and no fire yet. Let the shell dry through. ${say.weigh()}`,
  }),
  maybe: (say) => ({
    title: title(say, "may have been damp"),
    says: `${perhaps(say)}${accepted(say)}`,
    remedy: `Give the next coat more time. ${say.weigh()}`,
  }),
  weak: (say) => ({
    title: isOne(say)
      ? `Weak bond under coat ${say.show("over")}`
      : `Weak bonds over ${say.coatsIn("which").toLowerCase()}`,
    says: `${hung(say)} Fire has driven the water out, but the bond stays weak.${halved(say)}`,
    remedy:
      "Before the pour, look for flakes and tap for hollow spots. More coats or packed sand back it up.",
  }),
  "dried-since": (say) => ({
    title: damp(say),
    says: `${hung(say)}${accepted(say)} The shell has dried since; the bond may be weak.${halved(say)}`,
    remedy: "Before burnout, tap the shell for hollow spots and look for lifting.",
  }),
  unknown: (say) => ({
    title: "Dryness between coats not known",
    says: `${say.coatsIn("which")}: no room reading, touch or weight was logged before the next coat.`,
    remedy: "Log temperature and humidity at each dip.",
  }),
};
