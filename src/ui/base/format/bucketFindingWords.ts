import { wereWords } from "./bucketHealthWords.ts";
import type { Say, WordsOf } from "./findingSay.ts";
import { slurryFindings as t } from "../words/slurryFindings.ts";

const came = (say: Say): string =>
  t["came.coatsCameFromBucket"]({
    coats: say.coatsIn("which"),
    bucket: say.text("bucket"),
    wereWords: wereWords(say.text("codes")),
  });

const lookOver = t["lookOver.checkTheseCoatsFor"];

export const unfitBucketWords: WordsOf<"dipped-from-unfit-bucket"> = {
  unfit: (say) => ({ title: t["unfitBucket.unfit.title"], says: came(say), remedy: lookOver }),
  "unfit-accepted": (say) => ({
    title: t["unfitBucket.unfit-accepted.title"],
    says: t["unfitBucket.unfit-accepted.says"]({
      came: came(say),
      reason: say.text("reason").replace(/\.+$/, ""),
    }),
    remedy: lookOver,
  }),
  watched: (say) => ({
    title: t["unfitBucket.watched.title"],
    says: came(say),
    remedy: t["unfitBucket.watched.remedy"],
  }),
  "not-checked": (say) => ({
    title: t["unfitBucket.not-checked.title"],
    says: t["unfitBucket.not-checked.says"]({ coats: say.coatsIn("which"), bucket: say.text("bucket") }),
    remedy: t["unfitBucket.not-checked.remedy"],
  }),
  "never-read": (say) => ({
    title: t["unfitBucket.never-read.title"],
    says: t["unfitBucket.never-read.says"]({
      coats: say.coatsIn("which"),
      bucket: say.text("bucket"),
      days: say.show("days"),
    }),
    remedy: t["unfitBucket.never-read.remedy"],
  }),
};
