import { useLiveQuery } from "dexie-react-hooks";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
import type { AirReading, Bucket, Piece, Recipe, Room } from "../../../logbook/piece/piece.ts";
import type { Surroundings } from "../../../logbook/piece/surroundings.ts";
import { dropDraft, readDraft, writeDraft } from "../../../storage/drafts.ts";
import { memoOf } from "../../../storage/memoOf.ts";
import { getPattern, listPatterns } from "../../../storage/patterns.ts";
import {
  readArchive,
  readBucketState,
  readBuckets,
  readPiece,
  readPieceLog,
  readPieceNames,
  readRack,
  readRecipes,
  readRoom,
  readRooms,
  readShop,
  type PieceData,
  type RackData,
} from "../../../storage/reads.ts";
import {
  readMelt,
  readMelts,
  readPour,
  readPours,
  readRun,
  readRuns,
  readRunsOf,
  type Which,
} from "../../../storage/fires.ts";
import { readPourLog } from "../../../storage/pourLog.ts";
import { changeSettings, readSettings, type Settings } from "../../../storage/settings.ts";
import type { SetAside } from "../../../storage/streams.ts";
import { rackItem, workOutRack, type RackItem, type WholeRack } from "./rackItems.ts";
import { useNow } from "./useNow.ts";
import { useShop } from "./shop.tsx";

export type { RackItem } from "./rackItems.ts";

function useRackOf(archivedIds: readonly string[] | null): WholeRack | undefined {
  const { db, clock } = useShop();
  const tick = useNow();
  const ids = archivedIds === null ? null : JSON.stringify(archivedIds);
  const rack = useLiveQuery(() => {
    const asked = ids === null ? null : (JSON.parse(ids) as readonly string[]);
    return readRack(db, clock(), { archivedIds: asked });
  }, [db, clock, ids]);
  return useMemo(() => {
    if (rack === undefined) return undefined;
    // The clock may have gone past the last tick, and what has just been written must not lie in the future.
    return workOutRack(memoOf(db), rack, Math.max(tick, clock()));
  }, [rack, tick, clock, db]);
}

/** Every piece in work, what needs hands first; undefined while it loads, as with every hook here. */
export const useRack = (): readonly RackItem[] | undefined => useRackOf(null)?.items;
/** The same with the pieces that can't be worked out, for a list that shows them. */
export const useWholeRack = (): WholeRack | undefined => useRackOf(null);

/** The pieces in work with all that the sums need beside them, for a screen that looks further ahead than the rack. */
export function useRackData(): RackData | undefined {
  const { db, clock } = useShop();
  return useLiveQuery(() => readRack(db, clock()), [db, clock]);
}

/** Those of these pieces that are through or put away. */
export const useArchived = (ids: readonly string[]): readonly RackItem[] | undefined => useRackOf(ids)?.items;

/** Every piece that is through or put away, as it was logged. */
export function useArchive(): readonly Piece[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readArchive(db), [db]);
}

export type OnePiece = {
  readonly item: RackItem;
  /** The whole log of the piece in order, struck entries and strikes too. */
  readonly entries: readonly Entry[];
  /** What its sums were worked out from, for a screen that works out more. */
  readonly around: Surroundings;
  /** What of it can't be read. */
  readonly unread: Unread;
};
type Unread = { readonly setAside: readonly SetAside[]; readonly isSummaryRotten: boolean };

/** One piece; null when there is none of that id. */
export function usePiece(id: string): OnePiece | null | undefined {
  const { db, clock } = useShop();
  const tick = useNow();
  const read = useLiveQuery(() => readPiece(db, id, clock()), [db, id, clock]);
  return useMemo(() => {
    if (read === undefined || read === null) return read;
    const item = rackItem(read.piece, read, Math.max(tick, clock()), memoOf(db));
    return { item, entries: read.entries, around: read, unread: unreadOf(read) };
  }, [read, tick, clock, db]);
}

const unreadOf = ({ setAside, isSummaryRotten }: PieceData): Unread => ({
  setAside,
  isSummaryRotten: isSummaryRotten === true,
});

/** The name and lines of a piece alone, without any sum; null when there is none of that id. */
export function usePieceLog(
  id: string,
): { readonly name: string | null; readonly entries: readonly Entry[] } | null | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readPieceLog(db, id), [db, id]);
}

/** The names of these pieces, of those that are on this device. */
export function usePieceNames(ids: readonly string[]): readonly string[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readPieceNames(db, ids), [db, ids]);
}

export function useRooms(): readonly Room[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRooms(db), [db]);
}

/** A room with its readings from `since` (epoch ms) on, led by the one that held before; null when there is none. */
export function useRoom(
  id: string,
  since = 0,
): { readonly room: Room; readonly readings: readonly AirReading[] } | null | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRoom(db, id, since), [db, id, since]);
}

export function useBuckets(): readonly Bucket[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readBuckets(db), [db]);
}

export function useBucket(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => readBucketState(db, id), [db, id]);
}

export function useRecipes(): readonly Recipe[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRecipes(db), [db]);
}

/** Kiln runs, what was last touched first. */
export function useRuns(which: Which = "all") {
  const { db } = useShop();
  return useLiveQuery(() => readRuns(db, which), [db, which]);
}

/** Those of these ids that are known; `ids` stays the same array while they are the same. */
export function useRunsOf(ids: readonly string[]) {
  const { db } = useShop();
  return useLiveQuery(() => readRunsOf(db, ids), [db, ids]);
}

export function useRun(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => readRun(db, id), [db, id]);
}

export function useMelts(which: Which = "all") {
  const { db } = useShop();
  return useLiveQuery(() => readMelts(db, which), [db, which]);
}

export function useMelt(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => readMelt(db, id), [db, id]);
}

export function usePours(which: Which = "all") {
  const { db } = useShop();
  return useLiveQuery(() => readPours(db, which), [db, which]);
}

export function usePour(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => readPour(db, id), [db, id]);
}

/** A pour's log with those of all it rests on. */
export function usePourLog(id: string) {
  const { db, clock } = useShop();
  return useLiveQuery(() => readPourLog(db, id, clock()), [db, id, clock]);
}

export function usePatterns() {
  const { db } = useShop();
  return useLiveQuery(() => listPatterns(db), [db]);
}

/** A pattern with its mesh; null when it is not kept on this device. */
export function usePattern(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => getPattern(db, id), [db, id]);
}

export function useFigures() {
  const { db } = useShop();
  return useLiveQuery(() => readShop(db), [db]);
}

/** The settings, never undefined: the page opens with them read. */
export function useSettings(): readonly [Settings, (changes: Partial<Settings>) => Promise<Settings>] {
  const { db, opened } = useShop();
  const settings = useLiveQuery(() => readSettings(db), [db], opened);
  const change = useCallback((changes: Partial<Settings>) => changeSettings(db, changes), [db]);
  return [settings, change];
}

/**
 * A half-written form that outlives the tab. The fourth part is false until a kept draft has been looked for; what
 * is typed before that wins over the kept one.
 */
export function useDraft<T>(
  key: string,
  initial: T,
): readonly [draft: T, set: (next: T) => void, drop: () => Promise<void>, looked: boolean] {
  const { db } = useShop();
  const [draft, setDraft] = useState(initial);
  const [looked, setLooked] = useState(false);
  const touched = useRef(false);
  useEffect(() => {
    let gone = false;
    const look = async (): Promise<void> => {
      const kept = await readDraft(db, key);
      if (gone) return;
      if (!touched.current) setDraft((start) => fitted(kept, start));
      setLooked(true);
    };
    void look();
    return () => {
      gone = true;
    };
  }, [db, key]);
  const set = useCallback(
    (next: T) => {
      touched.current = true;
      setDraft(next);
      void writeDraft(db, key, next);
    },
    [db, key],
  );
  const drop = useCallback(async () => {
    touched.current = true;
    await dropDraft(db, key);
  }, [db, key]);
  return [draft, set, drop, looked];
}

/** A kept draft laid over the form's start, so that a field it did not know yet has its starting value. */
function fitted<T>(kept: unknown, start: T): T {
  if (kept === null || typeof kept !== typeof start || Array.isArray(kept) !== Array.isArray(start))
    return start;
  return typeof kept === "object" && !Array.isArray(kept) ? { ...start, ...kept } : (kept as T);
}
