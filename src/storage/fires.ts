import type { Entry } from "../logbook/entries/entry.ts";
import { streamOf } from "../logbook/entries/entry.ts";
import type { Melt, Pour, Run } from "../logbook/fire/fireStates.ts";
import { foldMelt } from "../logbook/pour/foldMelt.ts";
import { foldPour } from "../logbook/pour/foldPour.ts";
import { foldRun } from "../logbook/fire/foldRun.ts";
import { hasState, statesOf } from "./listed.ts";
import type { Shelf } from "./projection.ts";
import type { ShopDb } from "./rows.ts";
import { readStream } from "./streams.ts";

/** Fires that were planned and have not ended, those that have, or all of them. */
export type Which = "open" | "ended" | "all";

/** Every line of the stream in order, struck ones and strikes included. */
type Logged = { readonly entries: readonly Entry[] };

const shelves: Readonly<Record<Which, readonly Shelf[]>> = {
  open: ["work"],
  ended: ["done"],
  all: ["work", "done"],
};
const newestFirst = <T extends { readonly lastAt: number }>(states: readonly T[]): readonly T[] =>
  states.toSorted((a, b) => b.lastAt - a.lastAt);

export const readRuns = async (db: ShopDb, which: Which = "all"): Promise<readonly Run[]> =>
  newestFirst(await statesOf(db, "run", shelves[which]));

export const readMelts = async (db: ShopDb, which: Which = "all"): Promise<readonly Melt[]> =>
  newestFirst(await statesOf(db, "melt", shelves[which]));

export const readPours = async (db: ShopDb, which: Which = "all"): Promise<readonly Pour[]> =>
  newestFirst(await statesOf(db, "pour", shelves[which]));

/** These kiln runs, of those that are known. */
export async function readRunsOf(db: ShopDb, ids: readonly string[]): Promise<readonly Run[]> {
  const rows = await db.projections.bulkGet(ids.map((id) => streamOf("run", id)));
  return rows.flatMap((row) => (row?.kind === "run" && hasState(row) ? [row.state] : []));
}

/** One kiln run with its whole log; null when there is none of that id. */
export async function readRun(db: ShopDb, id: string): Promise<(Logged & { readonly run: Run }) | null> {
  const { entries } = await readStream(db, streamOf("run", id));
  const run = foldRun(id, entries);
  return run && { run, entries };
}

export async function readMelt(db: ShopDb, id: string): Promise<(Logged & { readonly melt: Melt }) | null> {
  const { entries } = await readStream(db, streamOf("melt", id));
  const melt = foldMelt(id, entries);
  return melt && { melt, entries };
}

export async function readPour(db: ShopDb, id: string): Promise<(Logged & { readonly pour: Pour }) | null> {
  const { entries } = await readStream(db, streamOf("pour", id));
  const pour = foldPour(id, entries);
  return pour && { pour, entries };
}
