import { useLiveQuery } from "dexie-react-hooks";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { standingOf } from "../../logbook/buildStanding.ts";
import type { Entry } from "../../logbook/entry.ts";
import type { AirReading, Bucket, Piece, Recipe, Room } from "../../logbook/piece.ts";
import { rackOrder } from "../../logbook/rackOrder.ts";
import type { Standing, Surroundings } from "../../logbook/standing.ts";
import { findingsFor, worstLevel } from "../../rules/all.ts";
import type { Finding, Level } from "../../rules/finding.ts";
import { dropDraft, readDraft, writeDraft } from "../../storage/drafts.ts";
import {
  readBucket,
  readBuckets,
  readPiece,
  readRack,
  readRecipes,
  readRoom,
  readRooms,
  readShop,
} from "../../storage/reads.ts";
import { changeSettings, readSettings, type Settings } from "../../storage/settings.ts";
import { useNow } from "./useNow.ts";
import { useShop } from "./shop.tsx";

export type RackItem = {
  readonly standing: Standing;
  readonly findings: readonly Finding[];
  readonly worst: Level | null;
};

export function rackItem(piece: Piece, surroundings: Surroundings, now: number): RackItem {
  const standing = standingOf(piece, surroundings, now);
  const findings = findingsFor(standing);
  return { standing, findings, worst: worstLevel(findings) };
}

function useRackOf(archived: boolean): readonly RackItem[] | undefined {
  const { db, clock } = useShop();
  const now = useNow();
  const rack = useLiveQuery(() => readRack(db, clock(), { archived }), [db, clock, archived]);
  return useMemo(() => {
    if (rack === undefined) return undefined;
    // A piece written after the last look at the clock must not lie in the future.
    const at = Math.max(now, ...rack.pieces.map((piece) => Math.min(piece.lastAt, clock())));
    return rack.pieces
      .map((piece) => rackItem(piece, rack, at))
      .toSorted((a, b) => rackOrder(a.standing, b.standing));
  }, [rack, now, clock]);
}

/** Every piece in work, what needs hands first; undefined while it loads, as with every hook here. */
export const useRack = (): readonly RackItem[] | undefined => useRackOf(false);
export const useArchive = (): readonly RackItem[] | undefined => useRackOf(true);

export type OnePiece = {
  readonly item: RackItem;
  /** The whole log of the piece in order, struck entries and strikes too. */
  readonly entries: readonly Entry[];
};

/** One piece; null when there is none of that id. */
export function usePiece(id: string): OnePiece | null | undefined {
  const { db, clock } = useShop();
  const now = useNow();
  const read = useLiveQuery(() => readPiece(db, id, clock()), [db, id, clock]);
  return useMemo(() => {
    if (read === undefined || read === null) return read;
    const at = Math.max(now, Math.min(read.piece.lastAt, clock()));
    return { item: rackItem(read.piece, read, at), entries: read.entries };
  }, [read, now, clock]);
}

export function useRooms(): readonly Room[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRooms(db), [db]);
}

export function useRoom(
  id: string,
): { readonly room: Room; readonly readings: readonly AirReading[] } | null | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRoom(db, id), [db, id]);
}

export function useBuckets(): readonly Bucket[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readBuckets(db), [db]);
}

export function useBucket(id: string) {
  const { db } = useShop();
  return useLiveQuery(() => readBucket(db, id), [db, id]);
}

export function useRecipes(): readonly Recipe[] | undefined {
  const { db } = useShop();
  return useLiveQuery(() => readRecipes(db), [db]);
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
