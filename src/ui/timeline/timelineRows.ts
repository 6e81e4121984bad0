import type { AirAhead } from "../../logbook/airAhead.ts";
import { airAhead } from "../../logbook/airAhead.ts";
import type { Room } from "../../logbook/piece.ts";
import type { Standing } from "../../logbook/standing.ts";

export type Window = {
  readonly early: number | null;
  readonly likely: number | null;
  readonly late: number | null;
};

/** One piece on the timeline. */
export type TimelineRow = {
  readonly standing: Standing;
  /** What the end of the window allows. */
  readonly wants: "coat" | "review";
  readonly isReady: boolean;
  readonly window: Window;
};

/** The pieces of a room, what is ready first, over the air the room is taken to have. */
export type RoomLane = {
  readonly roomId: string;
  readonly room: Room | null;
  readonly air: AirAhead | null;
  readonly rows: readonly TimelineRow[];
};

/** The pieces that wait for a coat or for their last drying, by room; the others have nothing that air decides. */
export function roomLanes(
  standings: readonly Standing[],
  span: { readonly from: number; readonly to: number },
): readonly RoomLane[] {
  const byRoom = new Map<string, Standing[]>();
  for (const standing of standings) {
    if (rowOf(standing) === null) continue;
    const roomId = standing.piece.rooms.at(-1)?.roomId ?? "";
    const there = byRoom.get(roomId) ?? [];
    byRoom.set(roomId, there);
    there.push(standing);
  }
  return [...byRoom]
    .map(([roomId, there]): RoomLane => {
      const [first] = there;
      const room = first?.room ?? null;
      const air = first ? airAhead(first.readings, { altitudeM: room?.altitudeM ?? 0, ...span }) : null;
      const rows = there.flatMap((standing) => rowOf(standing) ?? []).toSorted(bySoonest);
      return { roomId, room, air, rows };
    })
    .toSorted((a, b) => b.rows.length - a.rows.length);
}

function rowOf(standing: Standing): TimelineRow | null {
  const { action, outer, finalDry, piece } = standing;
  if (piece.archived) return null;
  if (action.kind === "final-dry" || (action.kind === "review" && finalDry !== null)) {
    const slowest = finalDry?.places[0]?.drying.readyAt;
    const late = finalDry?.least.at ?? null;
    const { early = null, likely = null } = slowest ?? {};
    // The whole window lies no sooner than the least wait.
    const least = (at: number | null): number | null =>
      at === null ? null : Math.max(at, Math.min(late ?? at, finalDry?.practice.until ?? at));
    const window = { early: least(early), likely: least(likely), late };
    return { standing, wants: "review", isReady: action.kind === "review", window };
  }
  if (action.kind !== "dip") return null;
  const isReady = outer === null || outer.verdict === "dry";
  const window = outer?.readyAt ?? { early: null, likely: null, late: null };
  return { standing, wants: "coat", isReady, window };
}

function bySoonest(a: TimelineRow, b: TimelineRow): number {
  const soon = ({ isReady, window: { likely, late } }: TimelineRow): number =>
    isReady ? -Infinity : (likely ?? late ?? Infinity);
  const [soonA, soonB] = [soon(a), soon(b)];
  if (soonA !== soonB) return soonA < soonB ? -1 : 1;
  return a.standing.piece.startedAt - b.standing.piece.startedAt;
}
