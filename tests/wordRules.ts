/** Words the shop floor does not use, and terms that have one name here: what stands for them is the second. */
export const notTheTrade: readonly (readonly [pattern: RegExp, say: string])[] = [
  [/\breckon\w*/i, "calculate, estimate"],
  [/\b(fore)?told\b|\bforetell\w*/i, "forecast, entered"],
  [/\bsurely\b/i, "at the latest"],
  [/\bnobody\b/i, "name what to do"],
  [/\b(need|want)s? hands\b/i, "to do"],
  [/\bmend(s|ed|ing)?\b/i, "repair"],
  [/\bbroken out\b/i, "knocked out"],
  [/\bstr(ike|ikes|uck|iking)\b/i, "delete"],
  [/\bliquor\b/i, "binder"],
  [/\barmpit\b/i, "deep cavity"],
  [/\bleave to pour\b/i, "permission"],
  [/\b(late|middle) figure\b/i, "cautious, likely time"],
  [/\bseconds (were|are) out\b|\bout of the band\b/i, "viscosity out of range"],
  [/\bput (this plan )?away\b/i, "cancel, archive, retire"],
  [/\bno go\b/i, "no-go"],
  [/\bwent to its end\b/i, "completed"],
  [/\bmetal moves\b/i, "pour time"],
  [/\bcame to ready\b/i, "now dry"],
  [/\bsuffers? most\b/i, "weakest part"],
];

/** A source belongs on the figures page, or in a fold that says what a figure rests on. */
export const aSource = /\bfrom memory\b|\bcommon practice[,:]|\bno source\b/i;

export const mostWords = 22;

/** A text as sentences; what a list joins by "·" or ";" is read apart. */
export const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<=[.!?])["”’)]?\s+(?=[“"(]?[A-ZÀ-Þ0-9◦{])|\s·\s|;\s/).filter((one) => /\p{L}/u.test(one));

/** Words as a reader counts them: a figure with its unit is one. */
export const wordsIn = (sentence: string): number =>
  sentence.split(/[ \n]+/).filter((word) => /[\p{L}\d◦{]/u.test(word)).length;

/** What is wrong with a text, one line each; `isSource` where it names what a figure rests on. */
export function faultsOfText(text: string, isSource: boolean): readonly string[] {
  const words = notTheTrade.flatMap(([pattern, say]) => {
    const found = pattern.exec(text);
    return found === null ? [] : [`“${found[0]}” (say: ${say}) in: ${text}`];
  });
  if (isSource) return words;
  return [
    ...words,
    ...(aSource.test(text) ? [`a source in: ${text}`] : []),
    ...sentencesOf(text).flatMap((one) =>
      wordsIn(one) > mostWords ? [`${wordsIn(one)} words in: ${one}`] : [],
    ),
  ];
}
