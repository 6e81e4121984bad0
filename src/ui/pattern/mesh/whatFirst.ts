import { mmPerUnitOf, treeMisfit, type PatternStudy } from "./patternStudy.ts";
import { hollowsOf } from "./studyHollows.ts";

/** What has to be said before figures of a pattern may be used elsewhere; null where nothing has. */
export function whatFirst(study: PatternStudy): string | null {
  const mmPerUnit = mmPerUnitOf(study);
  if (mmPerUnit === null) return "Say what unit the file is in first.";
  if (hollowsOf(study, mmPerUnit)?.are === null)
    return "Say first whether the closed void will be metal or core.";
  return treeMisfit(study) === null ? null : "The tree no longer fits. Draw it anew, or take it away.";
}
