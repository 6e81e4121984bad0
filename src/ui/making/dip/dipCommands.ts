import type { Command } from "../../../logbook/log/command.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { CrackKind } from "../../../logbook/entries/pieceBodies.ts";
import type { DipSession } from "../../../logbook/dip/dipSession.ts";
import type { DipTile } from "./dipTile.ts";

/** The tap on a tile: this coat, on this piece, in this visit. */
export function coatCommand(
  tile: DipTile,
  session: DipSession,
  { roomId, drainS }: { roomId: string; drainS: number | null },
): Command {
  return {
    do: "log",
    stream: streamOf("piece", tile.pieceId),
    type: "coat-dipped",
    body: {
      ...tile.coat,
      bucketId: session.bucketId,
      roomId,
      prewet: session.prewet,
      dipId: session.dipId,
      drainS: drainS ?? undefined,
      acceptedDamp: tile.damp ?? undefined,
      said: tile.said ?? undefined,
    },
  };
}

export const undoCommand = (pieceId: string, entryId: string): Command => ({
  do: "strike",
  stream: streamOf("piece", pieceId),
  entryId,
  reason: "undo",
});

export const retimeCommand = (pieceId: string, entryId: string, at: number): Command => ({
  do: "correct",
  stream: streamOf("piece", pieceId),
  entryId,
  at,
  reason: "time put right at the bucket",
});

export const skipCommand = (pieceId: string, step: number): Command => ({
  do: "log",
  stream: streamOf("piece", pieceId),
  type: "coat-skipped",
  body: { step, reason: "skipped at the bucket" },
});

export const redipCommand = (pieceId: string, coatId: string): Command => ({
  do: "log",
  stream: streamOf("piece", pieceId),
  type: "coat-redipped",
  body: { coatId },
});

export const damagedCommand = (pieceId: string, kind: CrackKind): Command => ({
  do: "log",
  stream: streamOf("piece", pieceId),
  type: "crack-found",
  body: { kind, stage: "coating", where: "seen at the bucket, place not noted" },
});
