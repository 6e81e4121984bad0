import { useCallback, useMemo, useState } from "react";
import type { Answered, NotAnswered } from "../../../workers/patternClient.ts";
import type { PatternAsked, PatternProgress } from "../../../workers/patternMessages.ts";
import { patternSession, type Question } from "./patternSession.ts";
import { mmPerUnitOf, type PatternStudy } from "./patternStudy.ts";
import { useAnswers } from "./useAnswers.ts";
import { useSavedStudy } from "./useSavedStudy.ts";
import { useUndo } from "./useUndo.ts";

export type PatternController = {
  readonly study: PatternStudy;
  /** Null while the unit is not known: nothing in millimetres can be asked. */
  readonly mmPerUnit: number | null;
  /** Kept by itself; tips and what stays are asked again for a new way to hang or other marks. */
  readonly change: (change: (study: PatternStudy) => PatternStudy) => void;
  /** The same, but so that it can be taken back; changes of the same `of` one after the other are one. */
  readonly act: (change: (study: PatternStudy) => PatternStudy, of?: string) => void;
  /** Null when there is nothing to take back. */
  readonly undo: (() => void) | null;
  readonly ask: <Q extends Question>(
    question: Q,
    asked: PatternAsked[Q],
    options?: {
      readonly signal?: AbortSignal | undefined;
      readonly onProgress?: ((progress: PatternProgress) => void) | undefined;
    },
  ) => Promise<Answered<Q> | NotAnswered>;
  /** What is being reckoned by itself at the moment. */
  readonly working: PatternProgress | null;
  /** Why the last of it was not. */
  readonly trouble: NotAnswered | null;
  /** Nothing more is kept of it. */
  readonly forget: () => void;
  /** The file itself while it is at hand. */
  readonly file: () => Blob | null;
  /** False when sums run on the copy that is shown, for want of the file. */
  readonly isWhole: boolean;
};

/** The pattern of that id for a screen; undefined while it loads, null when it is not kept here. */
export function usePatternController(id: string): PatternController | null | undefined {
  const { study, change, forget } = useSavedStudy(id);
  const { act, undo } = useUndo(study, change);
  const [bench] = useState(patternSession);
  const ask = useCallback<PatternController["ask"]>(
    async (question, asked, options) =>
      study ? bench.ask(study, question, asked, options) : { ok: false, why: "no-mesh" },
    [bench, study],
  );
  const mmPerUnit = study ? mmPerUnitOf(study) : null;
  const { working, trouble } = useAnswers({ study: study ?? null, mmPerUnit, change, bench });
  const isWhole = study ? (bench.isWhole(study.id) ?? study.found.analysed.isWhole) : true;
  const file = useCallback(() => bench.file(id), [bench, id]);
  return useMemo(
    () =>
      study ? { study, mmPerUnit, change, act, undo, forget, file, ask, working, trouble, isWhole } : study,
    [study, mmPerUnit, change, act, undo, forget, file, ask, working, trouble, isWhole],
  );
}
