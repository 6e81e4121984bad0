import { useCallback, useState } from "react";
import type { PatternStudy } from "./patternStudy.ts";
import type { PatternController } from "./usePatternController.ts";

type Placed = Pick<PatternStudy, "marks" | "bars" | "up" | "cupMm">;
const most = 30;

/** Changes of what is placed and how the piece hangs, each of which can be taken back. */
export function useUndo({ study, change }: Pick<PatternController, "study" | "change">): {
  readonly act: (change: (study: PatternStudy) => PatternStudy) => void;
  /** Null when there is nothing to take back. */
  readonly undo: (() => void) | null;
} {
  const [past, setPast] = useState<readonly Placed[]>([]);
  const { marks, bars, up, cupMm } = study;
  const act = useCallback(
    (next: (study: PatternStudy) => PatternStudy) => {
      setPast((before) => [...before.slice(1 - most), { marks, bars, up, cupMm }]);
      change(next);
    },
    [change, marks, bars, up, cupMm],
  );
  const undo = useCallback(() => {
    const last = past.at(-1);
    if (last === undefined) return;
    setPast(past.slice(0, -1));
    change((now) => ({ ...now, ...last }));
  }, [past, change]);
  return { act, undo: past.length === 0 ? null : undo };
}
