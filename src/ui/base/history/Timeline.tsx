import { useEffect, useMemo, useState } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { runHeat, type RunHeat } from "../../../logbook/fire/runHeat.ts";
import { useBuckets, useFigures, useRecipes, useRooms, useRunsOf } from "../state/live.ts";
import { useFormat } from "../state/useFormat.ts";
import type { EntryNames } from "../format/entryNames.ts";
import { Button } from "../parts/Button.tsx";
import { LeftOutNote } from "../parts/LeftOutNote.tsx";
import sheet from "../styles/sheet.module.css";
import styles from "./Timeline.module.css";
import { TimelineEntry } from "./TimelineEntry.tsx";
import { timelineLines } from "./timelineLines.ts";

/** Every line of a log, newest first, struck ones too; with `shows` only so many until the others are asked for. */
export function Timeline({
  stream,
  entries,
  shows,
}: {
  readonly stream: string;
  readonly entries: readonly Entry[];
  readonly shows?: number | undefined;
}) {
  const lines = useMemo(() => timelineLines(entries), [entries]);
  const names = useEntryNames(entries);
  const [isWhole, setIsWhole] = useState(isOneAskedFor);
  const shown = shows === undefined || isWhole ? lines : lines.slice(0, shows);
  useEffect(() => {
    const follow = (): void => {
      if (isOneAskedFor()) setIsWhole(true);
    };
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  useEffect(() => {
    // The line was not there yet when the browser looked for it.
    if (isWhole && isOneAskedFor()) document.getElementById(location.hash.slice(1))?.scrollIntoView();
  }, [isWhole]);
  return (
    <section aria-labelledby="timeline-title">
      <h2 id="timeline-title" className={styles["title"]}>
        Log
      </h2>
      <LeftOutNote entries={entries} />
      <ol className={`${sheet["list"]} ${sheet["closed"]}`}>
        {shown.map((line) => (
          <TimelineEntry key={line.entry.id} stream={stream} line={line} names={names} />
        ))}
      </ol>
      {shown.length < lines.length && (
        <Button onPress={() => setIsWhole(true)}>All {lines.length} lines</Button>
      )}
    </section>
  );
}

/** Whether the address names one line of a log. */
const isOneAskedFor = (): boolean => location.hash.startsWith("#entry-");

function useEntryNames(entries: readonly Entry[]): EntryNames {
  const format = useFormat();
  const rooms = useRooms();
  const buckets = useBuckets();
  const recipes = useRecipes();
  const shop = useFigures();
  const runs = useRunsOf(useRunIds(entries));
  return useMemo(() => {
    const nameIn =
      (all: readonly { readonly id: string; readonly name: string }[] | undefined) => (id: string) =>
        all?.find((one) => one.id === id)?.name ?? "…";
    return {
      format,
      room: nameIn(rooms),
      bucket: nameIn(buckets),
      recipe: nameIn(recipes),
      alloy: (id: string) => (shop === undefined ? "…" : alloyName(id, shop)),
      runHeat: (id: string, given: RunHeat) => {
        const run = runs?.find((one) => one.id === id);
        return run === undefined ? null : runHeat(run, given);
      },
    };
  }, [format, rooms, buckets, recipes, shop, runs]);
}

/** The kiln runs these lines name as firings; the same array while they are the same. */
function useRunIds(entries: readonly Entry[]): readonly string[] {
  const ids = entries.flatMap((entry) =>
    entry.type === "shell-fired" && entry.body.runId !== undefined ? [entry.body.runId] : [],
  );
  const joined = [...new Set(ids)].join(" ");
  return useMemo(() => (joined === "" ? [] : joined.split(" ")), [joined]);
}
