import { useEffect, useEffectEvent, useState } from "react";
import type { NotAnswered } from "../../../workers/patternClient.ts";
import type { PatternProgress } from "../../../workers/patternMessages.ts";
import { deviceCaps } from "./deviceCaps.ts";
import type { PatternSession } from "./patternSession.ts";
import { heldOf, marksKey, upResultsOf, type Shape } from "./patternResults.ts";
import { pointsOf, resultsFor, tipLimits, withResults, type PatternStudy } from "./patternStudy.ts";

type Change = (change: (study: PatternStudy) => PatternStudy) => void;
type From = {
  readonly study: PatternStudy | null;
  readonly mmPerUnit: number | null;
  readonly change: Change;
  readonly bench: PatternSession;
};

/** A turn by the finger is many small ones: what is asked waits for it to rest. */
const restMs = 120;
const recessDepthMm = 3;

/** Asks by itself for what the page shows: shape once, tips for every way to hang, what stays for every set of marks. */
export function useAnswers({ study, mmPerUnit, change, bench }: From): {
  readonly working: PatternProgress | null;
  readonly trouble: NotAnswered | null;
} {
  const [working, setWorking] = useState<PatternProgress | null>(null);
  const [trouble, setTrouble] = useState<NotAnswered | null>(null);
  const results = study === null ? null : resultsFor(study);
  const key = study === null ? "" : marksKey(study.marks);
  const wantsTips = study !== null && mmPerUnit !== null && results === null;
  const wantsHeld = results !== null && mmPerUnit !== null && results.held?.key !== key;
  const wantsShape = mmPerUnit === null || results?.held == null ? null : missingOf(study?.shape ?? null);
  const wish = wantsTips ? "tips" : wantsHeld ? "held" : wantsShape;
  const mesh = [study?.id, study?.holesClosed, study?.seamsJoined, study?.hollowsAre].join("; ");
  const asked = [mesh, study?.up.join(" "), key, mmPerUnit].join("; ");
  const job = wish === null ? null : `${wish} for ${asked}`;

  const answer = useEffectEvent(async (signal: AbortSignal) => {
    if (study === null || mmPerUnit === null || wish === null) return;
    const fault = await answered(
      wish,
      { study, mmPerUnit, change, bench },
      { signal, onProgress: setWorking },
    );
    if (signal.aborted) return;
    setWorking(null);
    setTrouble(fault);
  });

  useEffect(() => {
    if (job === null) return;
    const stop = new AbortController();
    const timer = setTimeout(() => void answer(stop.signal), restMs);
    return () => {
      clearTimeout(timer);
      stop.abort();
      setWorking(null);
    };
  }, [job]);
  return { working, trouble };
}

type Wish = "tips" | "held" | "thickness" | "spans" | "recesses";

/** The next part of the shape to find, the quickest first. */
function missingOf(shape: Shape | null): Wish | null {
  if (shape === null || shape.flats === null) return "spans";
  if (shape.recesses === null) return "recesses";
  return shape.thickness === null ? "thickness" : null;
}

type Options = { readonly signal: AbortSignal; readonly onProgress: (progress: PatternProgress) => void };

/** Null when it was found and put into the study. */
async function answered(
  wish: Wish,
  { study, mmPerUnit, change, bench }: { [K in keyof From]: NonNullable<From[K]> },
  options: Options,
): Promise<NotAnswered | null> {
  const { cells, columns } = deviceCaps();
  const { up } = study;
  const found = (part: Partial<Shape>): void =>
    change((now) => ({ ...now, shape: { ...(now.shape ?? nothingFound), ...part } }));
  switch (wish) {
    case "tips": {
      const tips = await bench.ask(study, "tips", { mmPerUnit, up, ...tipLimits }, options);
      if (!tips.ok) return tips;
      change((now) => withResults(now, upResultsOf(up, tips.answer)));
      return null;
    }
    case "held": {
      const key = marksKey(study.marks);
      const drains = study.marks.map(({ point }) => point);
      const asked = { mmPerUnit, up, vents: pointsOf(study, "vent"), drains, columns };
      const held = await bench.ask(study, "trapped", asked, options);
      if (!held.ok) return held;
      const { air, plastic } = held.answer;
      change((now) => {
        const results = resultsFor({ byUp: now.byUp, up });
        if (results === null) return now;
        const { lowMm } = results;
        const told = { key, air: heldOf(air, { lowMm, turned: false }) };
        return withResults(now, {
          ...results,
          held: { ...told, plastic: heldOf(plastic, { lowMm, turned: true }) },
        });
      });
      return null;
    }
    case "thickness": {
      const walls = await bench.ask(study, "thickness", { mmPerUnit, cells }, options);
      if (!walls.ok) return walls;
      found({ thickness: walls.answer });
      return null;
    }
    case "spans": {
      const spans = await bench.ask(study, "spans", { mmPerUnit, cells }, options);
      if (!spans.ok) return spans;
      found(spans.answer);
      return null;
    }
    case "recesses": {
      const asked = { mmPerUnit, cells, minDepth: recessDepthMm };
      const recesses = await bench.ask(study, "recesses", asked, options);
      if (!recesses.ok) return recesses;
      found({ recesses: recesses.answer });
      return null;
    }
  }
}

const nothingFound: Shape = { thickness: null, flats: null, rounds: null, recesses: null };
