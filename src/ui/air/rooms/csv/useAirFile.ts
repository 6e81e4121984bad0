import { useEffect, useRef, useState } from "react";
import { clockSlackMs } from "../../../../logbook/log/timeGuard.ts";
import { readRoom } from "../../../../storage/reads.ts";
import type { AirCsvPlan, Delimiter } from "../../../../workers/airCsv/airCsvPlan.ts";
import { planGaps } from "../../../../workers/airCsv/airCsvPlan.ts";
import type { AirCsvGuess } from "../../../../workers/airCsv/guessAirCsv.ts";
import type { PreviewRow } from "../../../../workers/airCsv/previewAirCsv.ts";
import { mostAheadMs } from "../../../../workers/airCsv/airCsvRow.ts";
import type { AirCsvProgress, AirCsvResult } from "../../../../workers/airCsv/readAirCsv.ts";
import { makeAirCsvClient } from "../../../../workers/airCsvClient.ts";
import { useShop } from "../../../base/state/shop.tsx";
import type { NotDone } from "./importWords.ts";
import { deviceZone } from "../../../base/format/formatters.ts";

export type Guessed = Extract<AirCsvGuess, { ok: true }>;

export type AirFileState = {
  readonly file: File;
  readonly guess: Guessed;
  readonly plan: AirCsvPlan;
  /** A date that can be read in two orders waits for a person. */
  readonly isOrderOpen: boolean;
  readonly rows: readonly PreviewRow[];
  readonly read: ReadState;
};

export type ReadState =
  | { readonly is: "waiting" }
  | { readonly is: "reading"; readonly progress: AirCsvProgress | null }
  | { readonly is: "read"; readonly result: ReadResult };

export type ReadResult = AirCsvResult | { readonly ok: false; readonly why: NotDone };

type NotGuessed = Extract<AirCsvGuess, { ok: false }>["why"] | NotDone;

type Chosen = {
  readonly file: File;
  readonly guess: Guessed;
  readonly plan: AirCsvPlan;
  readonly isOrderOpen: boolean;
};

/** Rows looked at: some are shown, all can be named as the first with readings. */
const mostRows = 60;

const client = makeAirCsvClient();
const waiting: ReadState = { is: "waiting" };

/** The seconds that a room has a reading for. */
export async function storedSeconds(
  db: ReturnType<typeof useShop>["db"],
  roomId: string,
): Promise<Float64Array> {
  const found = await readRoom(db, roomId);
  return Float64Array.from(found?.readings ?? [], ({ at }) => Math.floor(at / 1000));
}

/**
 * A logger's file from its choice on: what was guessed, how it is to be read, and what came of reading it whole, which
 * starts anew with every change of the plan.
 */
export function useAirFile(roomId: string) {
  const { db, clock } = useShop();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [refused, setRefused] = useState<NotGuessed | null>(null);
  const [rows, setRows] = useState<readonly PreviewRow[]>([]);
  const [read, setRead] = useState<ReadState>(waiting);
  const job = useRef<AbortController | null>(null);
  useEffect(() => () => job.current?.abort(), []);

  /** Ends what is under way, and makes what follows the only one whose word counts. */
  const newJob = () => {
    job.current?.abort();
    const own = new AbortController();
    job.current = own;
    return { signal: own.signal, isCurrent: () => job.current === own };
  };

  const start = async (next: Chosen): Promise<void> => {
    const { signal, isCurrent } = newJob();
    const { file, plan } = next;
    const nowMs = nowFor(clock());
    setChosen(next);
    setRead(waiting);
    const shown = await client.preview(file, plan, { nowMs, mostRows, signal });
    if (!isCurrent()) return;
    if (shown.ok) setRows(shown.rows);
    if (next.isOrderOpen || planGaps(plan).length > 0) return;
    setRead({ is: "reading", progress: null });
    const result = await client.read(file, plan, {
      onBad: "skip",
      nowMs,
      storedS: await storedSeconds(db, roomId),
      onProgress: (progress) => isCurrent() && setRead({ is: "reading", progress }),
      signal,
    });
    if (isCurrent()) setRead({ is: "read", result });
  };

  const choose = async (file: File, delimiter?: Delimiter): Promise<void> => {
    const { isCurrent, signal } = newJob();
    const guess = await client.guess(file, { zone: deviceZone(), delimiter, signal });
    if (!isCurrent()) return;
    setRefused(guess.ok ? null : guess.why);
    setRows([]);
    if (guess.ok) await start({ file, guess, plan: guess.plan, isOrderOpen: guess.openDate !== null });
    else setChosen(null);
  };

  const state: AirFileState | null = chosen && { ...chosen, rows, read };
  return {
    state,
    refused,
    choose,
    /** Changes how the file is read; saying the order of the date answers an open one. */
    change: (
      changes: Partial<AirCsvPlan>,
      { saysOrder = false }: { readonly saysOrder?: boolean } = {},
    ): void => {
      if (chosen === null) return;
      const isOrderOpen = chosen.isOrderOpen && !saysOrder;
      void start({ ...chosen, plan: { ...chosen.plan, ...changes }, isOrderOpen });
    },
    stop: () => job.current?.abort(),
    again: () => void (chosen && start(chosen)),
    putAway: () => {
      newJob();
      setChosen(null);
      setRefused(null);
    },
  };
}

/** The reader lets a clock run a day ahead; the log takes nothing that has not come, but for the slack of two clocks. */
const nowFor = (now: number): number => now - mostAheadMs + clockSlackMs;
