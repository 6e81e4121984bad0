import { useCallback, useEffect, useRef, useState } from "react";
import { getPattern, putPattern } from "../../../storage/patterns.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import type { PatternStudy } from "./patternStudy.ts";
import { readStudy } from "./readStudy.ts";

const restMs = 500;

/**
 * A pattern kept on this device and its changes, which are written down when they come to rest, and at the latest when
 * the page goes. Undefined while it loads, null when there is none.
 */
export function useSavedStudy(id: string): {
  readonly study: PatternStudy | null | undefined;
  readonly change: (change: (study: PatternStudy) => PatternStudy) => void;
  /** Nothing more is written down: the pattern is about to be removed. */
  readonly forget: () => void;
} {
  const { db, clock } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [study, setStudy] = useState<PatternStudy | null | undefined>(undefined);
  const latest = useRef<PatternStudy | null>(null);
  const unsaved = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const save = useCallback(async () => {
    clearTimeout(timer.current);
    const kept = latest.current;
    if (kept === null || !unsaved.current) return;
    unsaved.current = false;
    const written = await putPattern(db, { id: kept.id, name: kept.name, savedAt: clock(), kept });
    if (!written.ok)
      say("The pattern’s last change is not saved: this device is full. Remove a pattern.", "refused");
  }, [db, clock, say]);

  useEffect(() => {
    let gone = false;
    const load = async (): Promise<void> => {
      const row = await getPattern(db, id);
      const read = row === null ? null : readStudy(row.kept);
      if (gone) return;
      latest.current = read;
      setStudy(read);
    };
    void load();
    const leave = (): void => void save();
    window.addEventListener("pagehide", leave);
    document.addEventListener("visibilitychange", leave);
    return () => {
      gone = true;
      window.removeEventListener("pagehide", leave);
      document.removeEventListener("visibilitychange", leave);
      leave();
    };
  }, [db, id, save]);

  const change = useCallback(
    (change: (study: PatternStudy) => PatternStudy) => {
      if (latest.current === null) return;
      const next = change(latest.current);
      if (next === latest.current) return;
      latest.current = next;
      unsaved.current = true;
      setStudy(next);
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void save(), restMs);
    },
    [save],
  );
  const forget = useCallback(() => {
    latest.current = null;
  }, []);
  return { study, change, forget };
}
