import type { AirAhead } from "../../../logbook/air/airAhead.ts";
import { airAhead } from "../../../logbook/air/airAhead.ts";
import type { Room } from "../../../logbook/piece/piece.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";

/** From when hands are wanted, and when it is dry at the latest; epoch ms, null where no time can be given. */
export type Window = { readonly from: number | null; readonly late: number | null };

/** One piece on the timeline. */
export type TimelineRow = {
  readonly standing: Standing;
  /** What the end of the window allows. */
  readonly wants: "coat" | "review";
  readonly isReady: boolean;
  /** True where no further coat may go on, however dry the outer one is. */
  readonly isHeld: boolean;
  readonly window: Window;
};

/** The pieces of a room, what is ready first, over the air the room is taken to have. */
export type RoomRow = {
  readonly roomId: string;
  readonly room: Room | null;
  readonly air: AirAhead | null;
  readonly rows: readonly TimelineRow[];
};

/** The pieces that wait for a coat or for their last drying, by room; the others have nothing that air decides. */
export function roomRows(
  standings: readonly Standing[],
  span: { readonly from: number; readonly to: number },
  held: ReadonlySet<Standing> = new Set(),
): readonly RoomRow[] {
  const byRoom = new Map<string, Standing[]>();
  for (const standing of standings) {
    if (rowOf(standing, held) === null) continue;
    const roomId = standing.piece.rooms.at(-1)?.roomId ?? "";
    const there = byRoom.get(roomId) ?? [];
    byRoom.set(roomId, there);
    there.push(standing);
  }
  return [...byRoom]
    .map(([roomId, there]): RoomRow => {
      const [first] = there;
      const room = first?.room ?? null;
      const air = first ? airAhead(first.readings, { altitudeM: room?.altitudeM ?? 0, ...span }) : null;
      const rows = there.flatMap((standing) => rowOf(standing, held) ?? []).toSorted(bySoonest);
      return { roomId, room, air, rows };
    })
    .toSorted((a, b) => b.rows.length - a.rows.length);
}

function rowOf(standing: Standing, held: ReadonlySet<Standing>): TimelineRow | null {
  const { action, cover, forFire, finalDry, piece } = standing;
  if (piece.archived) return null;
  if (action.kind === "final-dry" || (action.kind === "review" && finalDry !== null)) {
    const at = forFire?.dryAt ?? null;
    return {
      standing,
      wants: "review",
      isReady: action.kind === "review",
      isHeld: false,
      window: { from: at, late: at },
    };
  }
  if (action.kind !== "dip") return null;
  const isHeld = held.has(standing);
  const isReady = !isHeld && (cover === null || cover.state === "dry");
  return {
    standing,
    wants: "coat",
    isReady,
    isHeld,
    window: { from: cover?.checkAt ?? null, late: cover?.dryAt ?? null },
  };
}

function bySoonest(a: TimelineRow, b: TimelineRow): number {
  const soon = ({ isReady, window: { from, late } }: TimelineRow): number =>
    isReady ? -Infinity : (from ?? late ?? Infinity);
  const [soonA, soonB] = [soon(a), soon(b)];
  if (soonA !== soonB) return soonA < soonB ? -1 : 1;
  return a.standing.piece.startedAt - b.standing.piece.startedAt;
}
