import type { Say, WordsOf } from "./findingSay.ts";

const kinds: Readonly<Record<string, string>> = {
  hairline: "Hairline crack",
  open: "Open crack",
  chip: "Chip",
  lift: "Lifted coat",
};
const crackTitle = (say: Say): string => kinds[say.text("kind")] ?? "Crack";
const place = (say: Say): string =>
  say.text("where") === "" ? "Place not told." : `Where: ${say.text("where")}.`;

export const crackWords: WordsOf<"open-crack"> = {
  open: (say) => ({
    title: `${crackTitle(say)}, not mended`,
    says: `${place(say)} Metal finds a crack.`,
    remedy:
      "Mend it with slurry and stucco, wire round it if the shell has been in the kiln, coat over it, and let it dry right through. Log the patch.",
  }),
  "patch-not-dry": (say) => ({
    title: `${crackTitle(say)}, patch not known to be dry`,
    says: `${place(say)} It was patched ${say.show("ageH")} ago, and nothing in the log says that the patch is dry.`,
    remedy: "Let it dry, feel it or weigh it, and log that; or put a coat over it and let that one dry.",
  }),
};

export const wireWords: WordsOf<"patched-without-wire"> = {
  "no-wire": (say) => ({
    title: "Patched after burnout, no wire",
    says: `${place(say)} A patched shell may open again as it heats; wire keeps the pieces together.`,
    remedy: "Wrap wire over the patch and coat over the wire. It adds no strength, it holds back a leak.",
  }),
};

const fired = (say: Say): string =>
  `Fired to ${say.show("peakC")} for ${say.show("holdMin")}; ${say.show("limitC")} for ${say.show("limitMin")} is the least that counts as fired.`;

export const firedWords: WordsOf<"fired-too-little"> = {
  cool: (say) => ({
    title: "Fired too cool",
    says: `${fired(say)} The shell is reckoned at half its strength.`,
    remedy: "Fire it again, hotter, before metal.",
  }),
  short: (say) => ({
    title: "Fired too short",
    says: `${fired(say)} The shell is reckoned at half its strength.`,
    remedy: "Fire it again for longer before metal.",
  }),
  "not-bonded": (say) => ({
    title: "Shell not fired",
    says: `${fired(say)} At that heat the polymer is gone and the silica has not bonded: the wall is at its weakest.`,
    remedy: "No metal in it. Fire it again, and log peak and time.",
  }),
  "not-logged": () => ({
    title: "No firing in the log",
    says: "Nothing tells how hot the shell was, or for how long, since its last coat or patch. Its strength can't be judged.",
    remedy: "Log the firing with its peak and how long it held, or fire it.",
  }),
};

const misrunRemedy = "Look for misruns and cold shuts. Next time preheat hotter, or pour sooner.";

export const coldShellWords: WordsOf<"poured-cold-shell"> = {
  "too-long": (say) => ({
    title: "Shell was long out of the kiln",
    says: `${say.show("outMin")} from kiln to metal. A wall of ${say.show("wallMm")} that left at ${say.show("leftC")} keeps ${say.show("leastC")} for ${say.show("limitMin")} in still air.`,
    remedy: "Look for misruns and cold shuts. Next time have the melt ready first.",
  }),
  "too-long-if": (say) => ({
    title: "Shell may have been long out of the kiln",
    says: `${say.show("outMin")} from kiln to metal. Calculated for a wall of ${say.show("wallMm")}, a thinnest section of ${say.show("sectionMm")} and ${say.show("leftC")} at the kiln door it has ${say.show("limitMin")}; what the log lacks of these is a starting value.`,
    remedy: "Log the thinnest section and the shell's heat, and the minutes are right for your shell.",
  }),
  "too-cold": (say) => ({
    title: "Shell was cold at the pour",
    says: `The shell was at ${say.show("shellC")}; for a section of ${say.show("sectionMm")} in this metal it is usually ${say.show("leastC")} or more.`,
    remedy: misrunRemedy,
  }),
  "cold-if-thin": (say) => ({
    title: "Shell was cold for thin work",
    says: `The shell was at ${say.show("shellC")}. The thinnest section isn't in the log; at ${say.show("sectionMm")} this metal usually has ${say.show("leastC")} or more.`,
    remedy: misrunRemedy,
  }),
  "preheat-cold": (say) => ({
    title: "Preheat is cool for this metal",
    says: `The shell is at ${say.show("shellC")}; for a section of ${say.show("sectionMm")} in this metal it is usually ${say.show("leastC")} or more.`,
    remedy: "Heat it further before metal, thin work hotter still.",
  }),
  "preheat-cold-if-thin": (say) => ({
    title: "Preheat is cool for thin work",
    says: `The shell is at ${say.show("shellC")}. The thinnest section isn't in the log; at ${say.show("sectionMm")} this metal usually has ${say.show("leastC")} or more.`,
    remedy: "Measure the thinnest section, or heat the shell further.",
  }),
  "not-known": () => ({
    title: "Shell heat at the pour not known",
    says: "Neither the minutes out of the kiln nor a shell temperature that can be judged is in the log.",
    remedy: "Correct the pour if you remember; next time start a clock when the kiln opens.",
  }),
};
