import { wantedCharge, type WantedCharge } from "../casting/wantedCharge.ts";
import { metalKnownOf } from "../piece/pieceMetal.ts";
import { hottestLeave } from "../pour/leaveHeat.ts";
import type { Furnace, Kiln } from "../shop/shopThings.ts";
import { dayVerdict, minutesFor, type DayVerdict } from "./dayVerdict.ts";
import { usualKind, type DayShop } from "./dayShop.ts";
import { fireAhead, type FireAhead } from "./fireAhead.ts";
import {
  inKiln,
  litresOf,
  meltOf,
  packPour,
  sharedHeat,
  type Packing,
  type PackPiece,
  type Placed,
} from "./packPour.ts";
import type { PieceAhead } from "./pieceAhead.ts";
import { whyNotPacked, type NotPacked } from "./notPacked.ts";

/** A piece that goes, with its verdict in the company it goes in. */
export type GoingPiece = {
  readonly of: PieceAhead;
  readonly verdict: DayVerdict & { is: "sure" | "perhaps" };
};

/** One melt of the day. */
export type MeltGroup = {
  /** Null where no crucible is set up. */
  readonly furnace: Furnace | null;
  readonly alloyId: string;
  readonly pieces: readonly GoingPiece[];
  /** As the melt's own plan has it for these pieces. */
  readonly charge: WantedCharge;
  /** Melt the crucible holds; null where it is not known. */
  readonly mostKg: number | null;
};

/** What stands in one kiln when metal moves. */
export type KilnGroup = {
  readonly kiln: Kiln | null;
  readonly pieces: readonly GoingPiece[];
  /** The heat all of them may have, °C; null where no metal of theirs has a known practice. */
  readonly heat: { readonly lowC: number; readonly highC: number } | null;
  readonly leaveC: number;
  readonly fire: Extract<FireAhead, { ok: true }>;
  /** Room the pieces of known size take, of what can be used; null where no kiln is set up. */
  readonly room: { readonly knownL: number; readonly usableL: number } | null;
  readonly sizeUnknown: number;
  /** Shells that have an area, kg; the others are counted as unknown. */
  readonly shellKg: number;
  readonly massUnknown: number;
};

/** Why a piece does not go that day, with its numbers. */
export type WhyLeft =
  | { readonly code: "stopped"; readonly stop: NonNullable<PieceAhead["stop"]> }
  | { readonly code: "no-alloy" }
  | { readonly code: "no-metal" }
  | { readonly code: "no-fire"; readonly fire: Extract<FireAhead, { ok: false }> }
  | { readonly code: "too-late"; readonly verdict: Extract<DayVerdict, { is: "too-late" }> }
  /** Alone it would make it; with the others in the kiln its fire takes so many minutes. */
  | { readonly code: "with-others"; readonly minutes: number; readonly lateMs: number }
  | { readonly code: "in-other-pour"; readonly pourId: string }
  | NotPacked;

export type LeftPiece = {
  readonly of: PieceAhead;
  readonly why: WhyLeft;
  /** Its verdict for the day by itself, where one could be given. */
  readonly verdict: DayVerdict | null;
};

export type PourProposal = {
  readonly melts: readonly MeltGroup[];
  readonly kilns: readonly KilnGroup[];
  readonly left: readonly LeftPiece[];
  readonly how: Packing["how"];
};

type From = {
  readonly pourAt: number;
  readonly day: DayShop;
  /** Pieces that another planned pour has already, by id, with its id. */
  readonly elsewhere: ReadonlyMap<string, string>;
  /** Pieces that the pour asked about has in its plan already. */
  readonly planned: ReadonlySet<string>;
};

/**
 * What could be poured together at `pourAt`, epoch ms, and why the rest can't. Pieces that are ready in time alone are
 * packed, those of the pour's own plan before the others, those sure before those that may be, of each the one begun
 * first; then the fire of all in
 * one kiln is planned together, which takes longer, and whoever misses the hour by that is left and the rest packed anew.
 * It yields after each piece and before each packing, so that a page can breathe in between.
 */
export function* pourProposal(pieces: readonly PieceAhead[], from: From): Generator<undefined, PourProposal> {
  const alone: Alone[] = [];
  for (const of of pieces) {
    alone.push(aloneOf(of, from));
    yield;
  }
  let able = alone.flatMap((one) => (one.why === null ? [one] : [])).toSorted(byUrgency);
  const left: LeftPiece[] = alone.flatMap(({ of, why, verdict }) =>
    why === null ? [] : [{ of, why, verdict }],
  );
  for (;;) {
    yield;
    const packing = packPour(
      able.map(({ of }) => packPieceOf(of, from)),
      from.day.pack,
    );
    const kilns = kilnGroups(packing.placed, able, from);
    const [missed] = kilns.flatMap((one) => ("why" in one ? [one] : []));
    if (missed !== undefined) {
      left.push(missed);
      able = able.filter(({ of }) => of.id !== missed.of.id);
      continue;
    }
    const groups = kilns.flatMap((one) => ("why" in one ? [] : [one]));
    const going = new Map(
      groups.flatMap((group) => group.pieces.map((piece) => [piece.of.id, piece] as const)),
    );
    return {
      kilns: groups,
      melts: meltGroups(packing.placed, going, from),
      left: [...left, ...notPacked(packing.placed, able, from)],
      how: packing.how,
    };
  }
}

type Alone = { readonly of: PieceAhead; readonly why: WhyLeft | null; readonly verdict: DayVerdict | null };

/** The piece by itself in the kiln that has it hot first. */
function aloneOf(of: PieceAhead, { pourAt, day, elsewhere }: From): Alone {
  const leave = (why: WhyLeft, verdict: DayVerdict | null = null): Alone => ({ of, why, verdict });
  if (of.stop !== null) return leave({ code: "stopped", stop: of.stop });
  const { dry } = of;
  if (dry === null) return leave({ code: "stopped", stop: { code: "no-time", why: "not-known" } });
  const kilns = day.kilns.length === 0 ? [null] : day.kilns;
  const fires = kilns.map((kiln) => fireAhead([dry], { kiln, preheatC: of.leaveC }));
  const fire = fires.reduce((a, b) => (b.ok && (!a.ok || b.minutes < a.minutes) ? b : a));
  const verdict = fire.ok ? dayVerdict(of, { pourAt, minutes: fire.minutes }) : null;
  const otherPour = elsewhere.get(of.id);
  if (otherPour !== undefined) return leave({ code: "in-other-pour", pourId: otherPour }, verdict);
  if (of.alloy === null) return leave({ code: "no-alloy" }, verdict);
  if (of.metalKg === null) return leave({ code: "no-metal" }, verdict);
  if (!fire.ok) return leave({ code: "no-fire", fire });
  if (verdict === null) return leave({ code: "stopped", stop: { code: "no-time", why: "not-known" } });
  return verdict.is === "too-late"
    ? leave({ code: "too-late", verdict }, verdict)
    : { of, why: null, verdict };
}

/** Sure before perhaps; then what was begun first. */
function byUrgency(a: Alone, b: Alone): number {
  const rank = ({ verdict }: Alone): number => (verdict?.is === "sure" ? 0 : 1);
  const [pieceA, pieceB] = [a.of.standing.piece, b.of.standing.piece];
  return rank(a) - rank(b) || pieceA.startedAt - pieceB.startedAt || (pieceA.id < pieceB.id ? -1 : 1);
}

const packPieceOf = (of: PieceAhead, { planned }: From): PackPiece => ({
  isPlanned: planned.has(of.id),
  id: of.id,
  alloyId: of.alloyId ?? "",
  metalKg: of.metalKg ?? 0,
  known: metalKnownOf(of.standing.piece, of.alloy),
  heat: of.heat,
  leaveC: of.leaveC,
  litre: of.litre,
});

/** Each kiln with its fire planned for all in it together, or the piece that misses the hour by that. */
function kilnGroups(
  placed: readonly Placed[],
  able: readonly Alone[],
  { pourAt, day }: From,
): readonly (KilnGroup | LeftPiece)[] {
  return day.pack.kilns.flatMap(({ id, usableL }): readonly (KilnGroup | LeftPiece)[] => {
    const packed = inKiln(placed, id);
    const inside = able.filter(({ of }) => packed.some((piece) => piece.id === of.id));
    if (inside.length === 0) return [];
    const kiln = day.kilns.find((one) => one.id === id) ?? null;
    const leaveC = hottestLeave(inside.map(({ of }) => of.leaveC));
    const fire = fireAhead(
      inside.flatMap(({ of }) => of.dry ?? []),
      { kiln, preheatC: leaveC },
    );
    const last = inside.at(-1);
    if (!fire.ok)
      return last === undefined
        ? []
        : [{ of: last.of, why: { code: "no-fire", fire }, verdict: last.verdict }];
    const going: GoingPiece[] = [];
    let missed: LeftPiece | null = null;
    for (const { of, verdict: alone } of inside) {
      const minutes = minutesFor(fire, of.id);
      const verdict = dayVerdict(of, { pourAt, minutes });
      if (verdict !== null && verdict.is !== "too-late") going.push({ of, verdict });
      else if (verdict !== null)
        missed = { of, why: { code: "with-others", minutes, lateMs: verdict.lateMs }, verdict: alone };
    }
    if (missed !== null) return [missed];
    const heat = sharedHeat(packed);
    const known = going.filter(({ of }) => of.shell.isKnown);
    return [
      {
        kiln,
        pieces: going,
        heat: heat === "none" ? null : heat,
        leaveC,
        fire,
        room: usableL === null ? null : { knownL: litresOf(packed), usableL },
        sizeUnknown: packed.filter(({ litre }) => litre === null).length,
        shellKg: known.reduce((sum, { of }) => sum + of.shell.massKg, 0),
        massUnknown: going.length - known.length,
      },
    ];
  });
}

function meltGroups(
  placed: readonly Placed[],
  going: ReadonlyMap<string, GoingPiece>,
  { day: { pack, furnaces, shop, melts } }: From,
): readonly MeltGroup[] {
  return pack.crucibles.flatMap(({ id, mostKg }) => {
    const packed = meltOf(placed, id);
    const pieces = packed.flatMap((piece) => going.get(piece.id) ?? []);
    const alloyId = packed[0]?.alloyId;
    const alloy = pieces[0]?.of.alloy ?? null;
    if (alloyId === undefined || alloy === null) return [];
    const charge = wantedCharge({
      pieces: pieces.map(({ of }) => of.standing.piece),
      alloy,
      chargeKind: usualKind,
      lossShare: null,
      melts,
      shop,
    });
    if (charge === null) return [];
    const furnace = furnaces.find((one) => one.id === id) ?? null;
    return [{ furnace, alloyId, pieces, charge, mostKg: mostKg(alloyId) }];
  });
}

/** Pieces that are ready in time and found no place, with what stands against each. */
function notPacked(placed: readonly Placed[], able: readonly Alone[], from: From): readonly LeftPiece[] {
  const { pack } = from.day;
  const taken = new Set(placed.map(({ piece }) => piece.id));
  return able
    .filter(({ of }) => !taken.has(of.id))
    .map(({ of, verdict }) => ({ of, why: whyNotPacked(packPieceOf(of, from), placed, pack), verdict }));
}
