import type { Finding, RuleId } from "../../../rules/finding.ts";
import { unfitBucketWords } from "./bucketFindingWords.ts";
import { coreLiftWords } from "./coreWords.ts";
import { dampAirWords, frostWords, lastCoatWords, oldReadingWords } from "./dryingFindingWords.ts";
import type { FindingText, Say, WordsOf } from "./findingSay.ts";
import { sayOf } from "./findingSay.ts";
import { coldShellWords, crackWords, firedWords, wireWords } from "./fireFindingWords.ts";
import { recoatedWords } from "./recoatedFindingWords.ts";
import { dampAgainWords, patternInsideWords, residueWords } from "./metalBarWords.ts";
import { runLimitWords } from "./runFindingWords.ts";
import {
  primeBareWords,
  primeHardWords,
  primeMovedWords,
  recipeFindingWords,
  sealWords,
  stuccoFindingWords,
} from "./primeFindingWords.ts";
import type { Format } from "./units.ts";
import { cannotJudgeWords, thinWallWords } from "./wallFindingWords.ts";

/** Words for every rule and every way it speaks: one that is missing fails to compile. */
const words: { readonly [R in RuleId]: WordsOf<R> } = {
  "recoated-before-dry": recoatedWords,
  "wall-too-thin": thinWallWords,
  "cannot-judge-wall": cannotJudgeWords,
  "air-too-damp": dampAirWords,
  "air-reading-old": oldReadingWords,
  "prime-temperature-moved": primeMovedWords,
  "prime-drying-hard": primeHardWords,
  "prime-left-bare": primeBareWords,
  "stucco-out-of-order": stuccoFindingWords,
  "recipe-not-followed": recipeFindingWords,
  "no-seal-coat": sealWords,
  "last-coat-damp": lastCoatWords,
  "open-crack": crackWords,
  "patched-without-wire": wireWords,
  "dipped-from-unfit-bucket": unfitBucketWords,
  "core-lift": coreLiftWords,
  "pattern-inside": patternInsideWords,
  "burnout-residue": residueWords,
  "shell-damp-again": dampAgainWords,
  "fired-too-little": firedWords,
  "run-broke-a-limit": runLimitWords,
  "poured-cold-shell": coldShellWords,
  frost: frostWords,
};

/**
 * A finding in words, in the user's units. It tells what was found and what to do about it; it never says that a
 * shell will hold.
 */
export function findingText(finding: Finding, format: Format): FindingText {
  const ofRule: Readonly<Record<string, (say: Say) => FindingText>> = words[finding.rule];
  const write = ofRule[finding.variant];
  if (write === undefined)
    throw new RangeError(`variant must be one of ${finding.rule}'s, found ${finding.variant}`);
  const text = write(sayOf(finding, format));
  const { passedBecause } = finding.texts;
  return passedBecause === undefined
    ? text
    : { ...text, says: `${text.says} Passed at the review: ${passedBecause}` };
}
