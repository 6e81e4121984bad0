import type { Say, WordsOf } from "./findingSay.ts";

const kinds: Readonly<Record<string, string>> = {
  hairline: "Hairline crack",
  open: "Open crack",
  chip: "Chip",
  lift: "Lifted coat",
};
const crackTitle = (say: Say): string => kinds[say.text("kind")] ?? "Crack";
const place = (say: Say): string => (say.text("where") === "" ? "" : `Where: ${say.text("where")}. `);

export const crackWords: WordsOf<"open-crack"> = {
  open: (say) => ({
    title: `${crackTitle(say)}, not repaired`,
    says: `${place(say)}Metal runs out through it.`,
    remedy:
      "Repair it with slurry and stucco. If the shell was fired, wire it too. Coat over it, let it dry, and log the repair.",
  }),
  "patch-not-dry": (say) => ({
    title: `${crackTitle(say)}, repair not yet dry`,
    says: `${place(say)}Repaired ${say.show("ageH")} ago. Nothing logged since shows that the repair is dry; a dry outer coat does not.`,
    remedy:
      "When the repair is dry right through, tap “Repair is dry”. Or coat over it and let that coat dry.",
  }),
  "trimmed-off": (say) => ({
    title: `${crackTitle(say)} in a part that is trimmed off`,
    says: `${place(say)}It does not hold the piece up.`,
    remedy: "After trimming, check that no crack runs on into the shell.",
  }),
};

export const wireWords: WordsOf<"patched-without-wire"> = {
  "no-wire": (say) => ({
    title: "Repaired after burnout, no wire",
    says: `${place(say)}The repair may open again as it heats. Wire holds the pieces together.`,
    remedy: "Wrap wire over the repair and coat over the wire.",
  }),
};

const fired = (say: Say): string =>
  `Fired to ${say.show("peakC")} for ${say.show("holdMin")}; at least ${say.show("limitC")} for ${say.show("limitMin")} is needed.`;

export const firedWords: WordsOf<"fired-too-little"> = {
  cool: (say) => ({
    title: "Fired too cool",
    says: `${fired(say)} Its strength counts at half.`,
    remedy: "Fire it again, hotter, before the pour.",
  }),
  short: (say) => ({
    title: "Fired too short",
    says: `${fired(say)} Its strength counts at half.`,
    remedy: "Fire it again, longer, before the pour.",
  }),
  "not-bonded": (say) => ({
    title: "Shell not fired",
    says: `${fired(say)} The silica has not bonded: the shell is at its weakest.`,
    remedy: "No metal in it. Fire it again, then log peak and time.",
  }),
  "not-logged": () => ({
    title: "No firing in the log",
    says: "No firing is logged since the last coat or repair, so the shell's strength is not known.",
    remedy: "Log the firing with its peak and hold, or fire the shell.",
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
    says: `${say.show("outMin")} from kiln to metal. A shell of ${say.show("wallMm")} with a section of ${say.show("sectionMm")} has ${say.show("limitMin")} from ${say.show("leftC")}. Starting values stand in for what is not logged.`,
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
    title: "Shell temperature at the pour not known",
    says: "Neither the shell's temperature nor the minutes out of the kiln are in the log.",
    remedy: "Correct the pour if you remember. Next time start the clock when the kiln opens.",
  }),
};
