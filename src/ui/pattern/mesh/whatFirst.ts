import { mmPerUnitOf, treeMisfit, type PatternStudy } from "./patternStudy.ts";
import { hollowsOf } from "./studyHollows.ts";

/** What has to be said before figures of a pattern may be used elsewhere; null where nothing has. */
export function whatFirst(study: PatternStudy): string | null {
  const mmPerUnit = mmPerUnitOf(study);
  if (mmPerUnit === null) return "First choose the file’s unit.";
  if (hollowsOf(study, mmPerUnit)?.are === null) return "First choose: closed void metal or core.";
  return treeMisfit(study) === null ? null : "The tree no longer fits. Redraw or remove it.";
}
