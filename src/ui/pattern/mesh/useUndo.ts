import { useCallback, useState } from "react";
import { placedOf, restored, type PatternStudy, type Placed } from "./patternStudy.ts";

/** Steps of one number being typed are one change. */
type Step = { readonly placed: Placed; readonly of: string | null };
const most = 30;

/** Changes of what is placed, of the size and of how the piece hangs, each of which can be taken back. */
export function useUndo(
  study: PatternStudy | null | undefined,
  change: (change: (study: PatternStudy) => PatternStudy) => void,
): {
  readonly act: (change: (study: PatternStudy) => PatternStudy, of?: string) => void;
  /** Null when there is nothing to take back. */
  readonly undo: (() => void) | null;
} {
  const [past, setPast] = useState<readonly Step[]>([]);
  const act = useCallback(
    (next: (study: PatternStudy) => PatternStudy, of: string | null = null) => {
      if (study) {
        const step = { placed: placedOf(study), of };
        setPast((before) =>
          of !== null && before.at(-1)?.of === of ? before : [...before.slice(1 - most), step],
        );
      }
      change(next);
    },
    [change, study],
  );
  const undo = useCallback(() => {
    const last = past.at(-1);
    if (last === undefined) return;
    setPast(past.slice(0, -1));
    change((now) => restored(now, last.placed));
  }, [past, change]);
  return { act, undo: past.length === 0 ? null : undo };
}
