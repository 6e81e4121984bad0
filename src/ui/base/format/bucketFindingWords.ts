import { wereWords } from "./bucketHealthWords.ts";
import type { Say, WordsOf } from "./findingSay.ts";

const came = (say: Say): string =>
  `${say.coatsIn("which")} came from “${say.text("bucket")}” while ${wereWords(say.text("codes"))}.`;

const lookOver = "Check these coats for thin spots, runs and lifting, and measure the shell with a caliper.";

export const unfitBucketWords: WordsOf<"dipped-from-unfit-bucket"> = {
  unfit: (say) => ({ title: "Dipped from an unfit slurry", says: came(say), remedy: lookOver }),
  "unfit-accepted": (say) => ({
    title: "Dipped from an unfit slurry",
    says: `${came(say)} Reason given: ${say.text("reason").replace(/\.+$/, "")}.`,
    remedy: lookOver,
  }),
  watched: (say) => ({
    title: "Slurry slightly off at the dip",
    says: came(say),
    remedy: "Keep this in mind if the casting shows a shell defect.",
  }),
  "not-checked": (say) => ({
    title: "Slurry not checked that day",
    says: `${say.coatsIn("which")}: no viscosity reading in the 12 hours before the dip (${say.text("bucket")}).`,
    remedy: "Check the viscosity now and use it as the best guess.",
  }),
  "never-read": (say) => ({
    title: "Slurry never checked",
    says: `${say.coatsIn("which")} came from “${say.text("bucket")}”, which has no reading after ${say.show("days")} days of dipping.`,
    remedy: "Check its viscosity and temperature before the next dip.",
  }),
};
