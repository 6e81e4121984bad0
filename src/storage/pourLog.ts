import { streamOf, type Entry } from "../logbook/entries/entry.ts";
import { foldPiece } from "../logbook/log/fold.ts";
import type { Surroundings } from "../logbook/piece/surroundings.ts";
import { hangingSpans, readSurroundings } from "./reads.ts";
import type { ShopDb } from "./rows.ts";
import { readStream } from "./streams.ts";

type PourLogRead = {
  readonly id: string;
  readonly entries: readonly Entry[];
  readonly around: Surroundings;
};

/** All lines that say whether a pour may go on: its own, and those of every piece, kiln run and melt it ever named. */
export function readPourLog(db: ShopDb, id: string, now: number): Promise<PourLogRead> {
  return db.transaction("r", db.projections, db.entries, db.settings, async () => {
    const linesOf = async (streams: readonly string[]): Promise<readonly Entry[]> =>
      (await Promise.all(streams.map((stream) => readStream(db, stream)))).flatMap(({ entries }) => entries);
    const own = await linesOf([streamOf("pour", id)]);
    const plans = own.flatMap((entry) => (entry.type === "pour-planned" ? [entry.body] : []));
    const pieceIds = [...new Set(plans.flatMap((plan) => plan.pieceIds))];
    const ofPieces = await linesOf(pieceIds.map((pieceId) => streamOf("piece", pieceId)));
    const pieces = pieceIds.flatMap(
      (pieceId) =>
        foldPiece(
          pieceId,
          ofPieces.filter(({ stream }) => stream === streamOf("piece", pieceId)),
        ) ?? [],
    );
    const streams = new Set([
      ...pieces.flatMap(({ runIds }) => runIds.map((runId) => streamOf("run", runId))),
      ...plans.flatMap(({ runId, meltId }) => [
        ...(runId === undefined ? [] : [streamOf("run", runId)]),
        ...(meltId === undefined ? [] : [streamOf("melt", meltId)]),
      ]),
    ]);
    return {
      id,
      entries: [...own, ...ofPieces, ...(await linesOf([...streams]))],
      around: await readSurroundings(db, hangingSpans(pieces, now)),
    };
  });
}
