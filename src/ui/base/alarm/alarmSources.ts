import { useEffect } from "react";
import { create } from "zustand";
import type { AlarmSource, RingDue } from "./ringDue.ts";

type Sources = {
  readonly sources: ReadonlyMap<string, AlarmSource>;
  readonly put: (source: AlarmSource) => void;
  readonly drop: (key: string) => void;
};

/** The one list of due times: every source puts its own in, one look rings them, one file takes them to the calendar. */
export const useAlarmSources = create<Sources>()((set) => ({
  sources: new Map(),
  put: (source) => set(({ sources }) => ({ sources: new Map(sources).set(source.key, source) })),
  drop: (key) =>
    set(({ sources }) => ({ sources: new Map([...sources].filter(([other]) => other !== key)) })),
}));

/** Puts a source's due times into the list while the caller lives; undefined while they load. */
export function useAlarmSource(source: AlarmSource | undefined): void {
  const put = useAlarmSources((list) => list.put);
  const drop = useAlarmSources((list) => list.drop);
  const key = source?.key;
  useEffect(() => {
    if (source !== undefined) put(source);
  }, [source, put]);
  useEffect(() => {
    if (key === undefined) return undefined;
    return () => drop(key);
  }, [key, drop]);
}

/** Every due time of every source, earliest first. */
export const allDues = (sources: Sources["sources"]): readonly RingDue[] =>
  [...sources.values()]
    .flatMap(({ dues }) => dues)
    .toSorted((a, b) => a.dueMs - b.dueMs || (a.id < b.id ? -1 : 1));
