import { useEffect, useMemo, useRef, useState } from "react";
import type { Command } from "../../../logbook/log/command.ts";
import type { Bucket, Coat } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { RackItem } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import type { Signals } from "../../base/glove/useSignals.ts";
import { coatCommand, retimeCommand, undoCommand } from "./dipCommands.ts";
import type { DipPlan } from "../../../logbook/dip/dipPlan.ts";
import { type DipSession, startSession, stillOn } from "../../../logbook/dip/dipSession.ts";
import { type DipTile, tileOf } from "./dipTile.ts";
import { doneWords } from "./dipWords.ts";
import type { SavedVisit } from "./savedVisit.ts";

type Desk = {
  readonly items: readonly RackItem[];
  readonly buckets: readonly Bucket[];
  readonly kept: SavedVisit | null;
  readonly keep: (visit: SavedVisit) => void;
  readonly drop: () => Promise<void>;
  readonly signals: Signals;
};

/** One visit to a bucket: its tiles, and what can be done from them. Everything is done only once the log says so. */
export function useDipVisit({ items, kept, keep, drop, signals }: Desk) {
  const { log, clock, moment } = useShop();
  const { locale } = useFormat();
  const byId = useMemo(() => new Map(items.map((item) => [item.standing.piece.id, item])), [items]);
  const [visit, setVisit] = useState<SavedVisit | null>(() => {
    const pieces = new Map(items.map(({ standing: { piece } }) => [piece.id, piece]));
    return kept !== null && stillOn(kept.session, pieces, clock()) ? kept : null;
  });
  const [justGiven, setJustGiven] = useState<ReadonlyMap<string, Coat>>(new Map());
  const [trouble, setTrouble] = useState<{ readonly pieceId: string; readonly text: string } | null>(null);
  const underWay = useRef(new Set<string>());

  useEffect(() => {
    if (visit === null) void drop();
    else keep(visit);
  }, [visit, keep, drop]);

  const session = visit?.session ?? null;
  const tiles = useMemo(() => {
    if (session === null) return [];
    return session.order.flatMap(({ pieceId, coats }): readonly DipTile[] => {
      const item = byId.get(pieceId);
      if (item === undefined) return [];
      const tile = tileOf(item, session, coats);
      // The log has it; the page reads it again a moment later.
      return [{ ...tile, given: justGiven.get(pieceId) ?? tile.given }];
    });
  }, [session, byId, justGiven]);

  // Once the page has read a coat back, the log alone speaks for it.
  const caughtUp = [...justGiven].filter(([pieceId, coat]) =>
    byId.get(pieceId)?.standing.piece.coats.some(({ id }) => id === coat.id),
  );
  if (caughtUp.length > 0)
    setJustGiven(new Map([...justGiven].filter(([id]) => !caughtUp.some(([done]) => done === id))));

  const change = (next: Partial<SavedVisit>): void =>
    setVisit((before) => (before === null ? null : { ...before, ...next }));

  /** Runs a command for a piece, one at a time; null when it was refused, which is then told on its tile. */
  const run = async (pieceId: string, command: Command) => {
    if (underWay.current.has(pieceId)) return null;
    underWay.current.add(pieceId);
    setTrouble(null);
    const result = await log(command, { quiet: true });
    underWay.current.delete(pieceId);
    if (result.ok) return result.entries;
    setTrouble({ pieceId, text: result.text });
    signals.refused(result.text);
    return null;
  };

  const tap = async (tile: DipTile, drainS: number | null): Promise<boolean> => {
    const roomId = byId.get(tile.pieceId)?.standing.piece.rooms.at(-1)?.roomId;
    if (session === null || roomId === undefined || tile.given !== null || tile.leftOut) return false;
    const entries = await run(tile.pieceId, coatCommand(tile, session, { roomId, drainS }));
    const entry = entries?.at(-1);
    if (entry === undefined) return false;
    const given = coatOf(tile, session, { id: entry.id, roomId, dippedAt: entry.at });
    setJustGiven((before) => new Map(before).set(tile.pieceId, given));
    const says = `Coat ${tile.coat.number} of ${tile.name}`;
    change({ last: { pieceId: tile.pieceId, entryId: entry.id, says, backTo: null } });
    signals.done(`${doneWords(given, clock(), locale)}: ${tile.name}`);
    return true;
  };

  /** Any other act on a piece; the undo bar then offers to take it back. */
  const act = async (pieceId: string, command: Command, says: string): Promise<boolean> => {
    const entry = (await run(pieceId, command))?.at(-1);
    if (entry === undefined) return false;
    change({ last: { pieceId, entryId: entry.id, says, backTo: null } });
    signals.done(says);
    return true;
  };

  const retime = async (tile: DipTile, at: number): Promise<boolean> => {
    if (tile.given === null) return false;
    const { id, dippedAt } = tile.given;
    const entries = await run(tile.pieceId, retimeCommand(tile.pieceId, id, at));
    const entry = entries?.find(({ type }) => type === "coat-dipped");
    if (entry === undefined) return false;
    const given = { ...tile.given, id: entry.id, dippedAt: at };
    setJustGiven((before) => new Map(before).set(tile.pieceId, given));
    const says = `New time of coat ${given.number} of ${tile.name}`;
    change({ last: { pieceId: tile.pieceId, entryId: entry.id, says, backTo: dippedAt } });
    signals.done(`${doneWords(given, clock(), locale)}: ${tile.name}`);
    return true;
  };

  const undo = async (): Promise<void> => {
    const last = visit?.last ?? null;
    if (last === null) return;
    const { pieceId, entryId, says, backTo } = last;
    const command = backTo === null ? undoCommand(pieceId, entryId) : retimeCommand(pieceId, entryId, backTo);
    if ((await run(pieceId, command)) === null) return;
    setJustGiven((before) => new Map([...before].filter(([id]) => id !== pieceId)));
    change({ last: null });
    signals.done(`Undone: ${says}`);
  };

  const start = (plan: DipPlan): void => {
    const standings = items.map((item) => item.standing);
    const made = startSession(standings, plan, { dipId: moment().newId(), now: clock(), prewet: false });
    setVisit({ session: made, last: null });
  };

  const changeSession = (changes: Partial<DipSession>): void =>
    setVisit((before) =>
      before === null ? null : { ...before, session: { ...before.session, ...changes } },
    );

  return {
    session,
    tiles,
    last: visit?.last ?? null,
    trouble,
    standingOf: (pieceId: string) => byId.get(pieceId)?.standing ?? null,
    start,
    stop: () => setVisit(null),
    /** The visit is over and the page is left: it must not be found again. */
    leave: drop,
    tap,
    act,
    retime,
    undo,
    leaveOut: (pieceId: string) => changeSession({ leftOut: [...(session?.leftOut ?? []), pieceId] }),
    bringBack: (pieceId: string) =>
      changeSession({ leftOut: (session?.leftOut ?? []).filter((id) => id !== pieceId) }),
    setPrewet: (prewet: boolean) => changeSession({ prewet }),
  };
}

export type DipVisit = ReturnType<typeof useDipVisit>;

function coatOf(
  tile: DipTile,
  session: DipSession,
  { id, roomId, dippedAt }: { id: string; roomId: string; dippedAt: number },
): Coat {
  return {
    ...tile.coat,
    id,
    roomId,
    dippedAt,
    bucketId: session.bucketId,
    prewet: session.prewet,
    redips: [],
    acceptedDamp: tile.damp,
    said: tile.said ?? undefined,
    note: null,
    photos: [],
    afterBurnout: false,
  };
}
