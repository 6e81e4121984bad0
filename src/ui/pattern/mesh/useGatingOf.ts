import { useMemo } from "react";
import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { usePattern } from "../../base/state/live.ts";
import { chainOfStudy, type GatingHandover } from "./chainOfStudy.ts";
import type { PatternStudy } from "./patternStudy.ts";
import { readStudy } from "./readStudy.ts";
import { whatFirst } from "./whatFirst.ts";

/** What a piece's pattern hands to the sums of gating and feeding. */
export type GatingOf = {
  readonly study: PatternStudy;
  /** What must be put right on the pattern before anything is taken from it. */
  readonly first: string | null;
  readonly found: Omit<GatingHandover, "from" | "by"> | null;
  readonly way: Pick<GatingHandover, "from" | "by"> | null;
};

/** Null where there is no pattern, or it is not kept on this device. `metalKgM3`: the solid metal. */
export function useGatingOf(patternId: string | undefined, metalKgM3: number): GatingOf | null {
  const row = usePattern(patternId ?? "");
  const kept = patternId === undefined ? null : (row?.kept ?? null);
  // Not with each key typed in the sums: an older pattern's hollows are looked for as it is read.
  return useMemo(() => gatingOf(kept, metalKgM3), [kept, metalKgM3]);
}

function gatingOf(kept: unknown, metalKgM3: number): GatingOf | null {
  const study = readStudy(kept);
  if (study === null) return null;
  const first = whatFirst(study);
  const handed = first === null ? chainOfStudy(study, metalKgM3) : null;
  if (handed === null) return { study, first, found: null, way: null };
  const { from, by, ...found } = handed;
  return { study, first, found, way: { from, by } };
}

/** Whether all that a pattern hands over stands in a draft. */
export const isTaken = (found: NonNullable<GatingOf["found"]>, draft: GatingDraft): boolean =>
  Object.entries(found).every(
    ([name, value]) => JSON.stringify(draft[name as keyof GatingDraft]) === JSON.stringify(value),
  );
