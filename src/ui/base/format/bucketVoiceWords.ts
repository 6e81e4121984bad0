import type { BucketVoice } from "../../../logbook/bucket/bucketVoice.ts";
import { adviceWords, type AdviceText } from "./bucketAdviceWords.ts";
import { reasonWords } from "./bucketHealthWords.ts";
import type { Format } from "./units.ts";

/** Why a bucket stands as it does; what to do about a reason stands beside it where no step takes its place. */
export const reasonLines = ({ reasons }: BucketVoice, format: Format): readonly AdviceText[] =>
  reasons.map(({ reason, isActed }) => {
    const { says, act } = reasonWords(reason, format);
    return { title: says, says: isActed ? act : "" };
  });

/** What its last reading asks for, step by step. */
export const stepLines = ({ steps }: BucketVoice, format: Format): readonly AdviceText[] =>
  steps.map((step) => {
    const { title, says } = adviceWords(step, format);
    return { title: `${title}.`, says };
  });

/** The first thing to do; null where there is nothing. */
export function firstAct(voice: BucketVoice, format: Format): string | null {
  const [reason] = reasonLines(voice, format);
  if (reason !== undefined && reason.says !== "") return reason.says;
  const [step] = stepLines(voice, format);
  return step === undefined ? null : `${step.title} ${step.says}`;
}
