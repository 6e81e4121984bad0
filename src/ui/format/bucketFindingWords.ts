import { wereWords } from "./bucketHealthWords.ts";
import type { Say, WordsOf } from "./findingSay.ts";

const coatWords = (say: Say): string =>
  `${say.value("count") === 1 ? "Coat" : "Coats"} ${say.text("which")} came from “${say.text("bucket")}”`;

const lookOver =
  "Look over these coats for thin places, runs and lifting, and measure the wall with a caliper.";

export const unfitBucketWords: WordsOf<"dipped-from-unfit-bucket"> = {
  unfit: (say) => ({
    title: "Dipped from a bucket that was not fit",
    says: `${coatWords(say)} while ${wereWords(say.text("codes"))}.`,
    remedy: lookOver,
  }),
  "unfit-accepted": (say) => ({
    title: "Dipped from a bucket that was not fit",
    says: `${coatWords(say)} while ${wereWords(say.text("codes"))}. Written at the bucket: ${say.text("reason").replace(/\.+$/, "")}.`,
    remedy: lookOver,
  }),
  watched: (say) => ({
    title: "Dipped from a bucket to be watched",
    says: `${coatWords(say)} while ${wereWords(say.text("codes"))}.`,
    remedy: "If the casting shows a fault of the shell, think of this.",
  }),
  "not-checked": (say) => ({
    title: "Dipped from a bucket nobody had read that day",
    says: `${coatWords(say)} without a cup reading in the half day before.`,
    remedy: "Read the cup now: what it says today is the best guess at what it was.",
  }),
};
