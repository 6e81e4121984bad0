import type { Entry, EntryOf } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import type { PiecePlan, PlanChanges } from "../entries/pieceBodies.ts";
import type { Coat, Phase, Piece } from "./piece.ts";

type Follow = (id: string) => string;

/** A piece as it is the moment it was started, before any coat. */
export function newPiece(id: string, { at, body, zone }: EntryOf<"piece-started">): Piece {
  return {
    id,
    plan: body.plan,
    phase: "coating",
    startedAt: at,
    rooms: [{ roomId: body.roomId, from: at }],
    coats: [],
    skipped: [],
    dryness: [],
    wall: [],
    weighings: [],
    holdsPassed: [],
    patterns: [],
    cracks: [],
    wires: [],
    reviews: [],
    burnouts: [],
    firings: [],
    dewaxes: [],
    rinses: [],
    inspections: [],
    runIds: [],
    preheats: [],
    outOfKiln: [],
    pourBegun: [],
    pours: [],
    outcome: null,
    archived: false,
    lastAt: at,
    zone,
  };
}

/**
 * What one more entry makes of a piece. Total: an entry that makes no sense where it stands changes what can
 * be changed and nothing else.
 */
export function evolvePiece(piece: Piece, entry: Entry, follow: Follow): Piece {
  if (!isOfKind(entry, "piece")) return piece;
  return entry.at > piece.lastAt
    ? { ...changed(piece, entry, follow), lastAt: entry.at, zone: entry.zone }
    : changed(piece, entry, follow);
}

function changed(piece: Piece, entry: EntryIn<"piece">, follow: Follow): Piece {
  const { id, at } = entry;
  switch (entry.type) {
    case "piece-changed":
      return { ...piece, plan: withChanges(piece.plan, entry.body.changes) };
    case "piece-moved":
      return moved(piece, { roomId: entry.body.roomId, at });
    case "pattern-measured":
      return { ...piece, patterns: [...piece.patterns, { ...entry.body, id, at }] };
    case "piece-weighed": {
      const { massG, note = null } = entry.body;
      const weighing = { id, at, massG, note, coats: piece.coats.length };
      return { ...piece, weighings: [...piece.weighings, weighing] };
    }
    case "hold-passed": {
      const { point, name = null } = entry.body;
      const passed = { id, at, point, name, coats: piece.coats.length };
      return { ...piece, holdsPassed: [...piece.holdsPassed, passed] };
    }
    case "coat-dipped":
      return dipped(piece, entry, follow);
    case "coat-redipped":
      return redipped(piece, { id, at, coatId: follow(entry.body.coatId) });
    case "coat-skipped":
      return { ...piece, skipped: [...piece.skipped, { id, at, ...entry.body }] };
    case "dryness-seen": {
      const seen = { ...entry.body, coatId: follow(entry.body.coatId), id, at };
      return { ...piece, dryness: [...piece.dryness, seen] };
    }
    case "wall-measured": {
      const { wallMm, where = null } = entry.body;
      return { ...piece, wall: [...piece.wall, { id, at, wallMm, where, coats: piece.coats.length }] };
    }
    case "crack-found":
      return cracked(piece, entry);
    case "crack-patched":
      return patched(piece, { id, at, how: entry.body.how, crackId: follow(entry.body.crackId) });
    case "patch-dried":
      return patchDried(piece, { id, at, crackId: follow(entry.body.crackId) });
    case "wire-wrapped":
      return { ...piece, wires: [...piece.wires, { id, at, note: entry.body.note }] };
    case "review-signed": {
      const reviews = [...piece.reviews, { ...entry.body, id, at, coats: piece.coats.length }];
      return { ...piece, reviews, phase: piece.phase === "coating" ? "reviewed" : piece.phase };
    }
    case "burnout-started": {
      const { runId = null } = entry.body;
      const burnouts = [...piece.burnouts, { id, runId, startedAt: at, readings: [], ended: null }];
      return { ...inRun(piece, runId), burnouts, phase: beforePour(piece, "burnout") };
    }
    case "burnout-read":
      return withBurnout(piece, (run) => ({
        ...run,
        readings: [...run.readings, { id, at, kilnC: entry.body.kilnC }],
      }));
    case "burnout-ended": {
      const { result } = entry.body;
      const ended = withBurnout(piece, (run) => ({ ...run, ended: { id, at, result } }));
      // A crack found in the kiln has already sent it back to coating.
      if (ended === piece || piece.phase !== "burnout") return ended;
      return { ...ended, phase: result === "stopped" ? phaseBeforeFire(piece) : "burnt-out" };
    }
    case "dewaxed":
      return dewaxed(piece, entry);
    case "shell-rinsed":
      return { ...piece, rinses: [...piece.rinses, { id, at }] };
    case "shell-inspected":
      return { ...piece, inspections: [...piece.inspections, { id, at, inside: entry.body.inside }] };
    case "shell-fired": {
      const { peakC, holdMin, inside = null, runId = null } = entry.body;
      const firings = [...piece.firings, { id, at, peakC, holdMin, inside, runId }];
      return { ...inRun(piece, runId), firings, phase: beforePour(piece, "fired") };
    }
    case "shell-preheated": {
      const { shellC, heldMin = null, runId = null } = entry.body;
      const preheats = [...piece.preheats, { id, at, shellC, heldMin, runId }];
      return { ...inRun(piece, runId), preheats, phase: beforePour(piece, "preheated") };
    }
    case "shell-out-of-kiln": {
      const { shellC, pourId = null } = entry.body;
      return { ...piece, outOfKiln: [...piece.outOfKiln, { id, at, shellC, pourId }] };
    }
    case "pour-begun": {
      const { metalC, pourId = null } = entry.body;
      return { ...piece, pourBegun: [...piece.pourBegun, { id, at, metalC, pourId }] };
    }
    case "metal-poured": {
      const pours = [...piece.pours, { ...entry.body, id, at }];
      return { ...piece, pours, phase: beforePour(piece, "poured") };
    }
    case "shell-knocked-out":
      return piece.phase === "poured" ? { ...piece, phase: "knocked-out" } : piece;
    case "piece-finished":
      return piece.phase === "knocked-out" ? { ...piece, phase: "finished" } : piece;
    case "outcome-told":
      return { ...piece, outcome: { ...entry.body, id, at } };
    case "piece-scrapped":
      return { ...piece, phase: "scrapped" };
    case "piece-archived":
      return { ...piece, archived: entry.body.archived };
    case "piece-started":
    case "note-written":
      return piece;
  }
}

const poured: readonly Phase[] = ["poured", "knocked-out", "finished", "scrapped"];

/** True once metal is in, or the piece was given up: no fire and no coat reaches it any more. */
export const isPastPour = (phase: Phase): boolean => poured.includes(phase);

const beforePour = (piece: Piece, to: Phase): Phase => (isPastPour(piece.phase) ? piece.phase : to);

const inRun = (piece: Piece, runId: string | null): Piece =>
  runId === null || piece.runIds.includes(runId) ? piece : { ...piece, runIds: [...piece.runIds, runId] };

/** The pattern was meant to leave by then, so a wall put on later may have none behind it. */
export const hasSeenFire = ({ burnouts, firings, dewaxes }: Piece): boolean =>
  burnouts.length > 0 || firings.length > 0 || dewaxes.length > 0;

/** In a running burnout the wax runs out on the way; otherwise getting it out is a step of its own. */
function dewaxed(piece: Piece, { id, at, body }: EntryOf<"dewaxed">): Piece {
  const { way, minutes, waxBackG = null, rinsed = false, runId = null } = body;
  const dewaxes = [...piece.dewaxes, { id, at, way, minutes, waxBackG, rinsed, runId }];
  const isIn: readonly Phase[] = ["coating", "reviewed", "preheated"];
  return { ...inRun(piece, runId), dewaxes, phase: isIn.includes(piece.phase) ? "dewaxed" : piece.phase };
}

/** Where a burnout that was stopped leaves it: reviewed or not, and with its wax run out or not. */
function phaseBeforeFire({ reviews, coats, cracks, dewaxes }: Piece): Phase {
  const last = reviews.at(-1);
  const held = last !== undefined && last.coats === coats.length && !cracks.some(({ at }) => at > last.at);
  const lastCoatAt = coats.at(-1)?.dippedAt ?? -Infinity;
  if (held) return dewaxes.some(({ at }) => at >= lastCoatAt) ? "dewaxed" : "reviewed";
  return "coating";
}

function withChanges(plan: PiecePlan, changes: PlanChanges): PiecePlan {
  const merged: Record<string, unknown> = { ...plan };
  for (const [key, value] of Object.entries(changes)) {
    if (value === null) delete merged[key];
    else if (value !== undefined) merged[key] = value;
  }
  // How well a figure was known goes with the figure.
  if (changes.metalKnown === undefined && isOtherMetal(plan, changes)) delete merged["metalKnown"];
  return { ...merged, name: changes.name ?? plan.name };
}

const isOtherMetal = (plan: PiecePlan, { metalKg, metalLitre }: PlanChanges): boolean =>
  (metalKg !== undefined && metalKg !== (plan.metalKg ?? null)) ||
  (metalLitre !== undefined && metalLitre !== null && metalLitre !== plan.metalLitre);

function moved(piece: Piece, { roomId, at }: { roomId: string; at: number }): Piece {
  if (piece.rooms.at(-1)?.roomId === roomId) return piece;
  return { ...piece, rooms: [...piece.rooms, { roomId, from: at }] };
}

function dipped(piece: Piece, { id, at, body }: EntryOf<"coat-dipped">, follow: Follow): Piece {
  const { acceptedDamp, said, beforeLog } = body;
  const coat: Coat = {
    id,
    number: piece.coats.length + 1,
    step: body.step,
    kind: body.kind,
    stuccoId: body.stuccoId,
    bucketId: body.bucketId,
    roomId: body.roomId,
    prewet: body.prewet,
    dippedAt: at,
    redips: [],
    acceptedDamp: acceptedDamp === undefined ? null : ofCoat(acceptedDamp, follow),
    ...(said === undefined ? {} : { said: ofCoat(said, follow) }),
    ...(beforeLog === undefined ? {} : { beforeLog }),
    note: body.note ?? null,
    photos: body.photos ?? [],
    afterBurnout: hasSeenFire(piece),
  };
  // A coat tells where the piece hangs, as a move does.
  const there = moved(outOfKiln(piece, { id, at }), { roomId: body.roomId, at });
  return { ...there, coats: [...piece.coats, coat], phase: beforePour(piece, "coating") };
}

/** The coat that is meant, also where its entry was corrected since. */
const ofCoat = <T extends { readonly coatId: string }>(told: T, follow: Follow): T => ({
  ...told,
  coatId: follow(told.coatId),
});

function redipped(piece: Piece, { id, at, coatId }: { id: string; at: number; coatId: string }): Piece {
  const coats = piece.coats.map((coat) =>
    coat.id === coatId ? { ...coat, redips: [...coat.redips, { id, at }] } : coat,
  );
  return { ...piece, coats };
}

function cracked(piece: Piece, { id, at, body }: EntryOf<"crack-found">): Piece {
  const crack = {
    id,
    at,
    kind: body.kind,
    stage: body.stage,
    where: body.where,
    photos: body.photos ?? [],
    afterBurnout: hasSeenFire(piece),
    patched: null,
    runId: body.runId ?? null,
    trimmedOff: body.trimmedOff,
  };
  return {
    ...inRun(piece, crack.runId),
    cracks: [...piece.cracks, crack],
    phase: beforePour(piece, "coating"),
  };
}

function patched(
  piece: Piece,
  { id, at, how, crackId }: { id: string; at: number; how: string; crackId: string },
): Piece {
  const cracks = piece.cracks.map((crack) =>
    crack.id === crackId ? { ...crack, patched: { id, at, how } } : crack,
  );
  return { ...outOfKiln(piece, { id, at }), cracks };
}

/** Found dry before the patch was made, it says nothing of the patch. */
function patchDried(piece: Piece, { id, at, crackId }: { id: string; at: number; crackId: string }): Piece {
  const cracks = piece.cracks.map((crack) =>
    crack.id === crackId && crack.patched !== null && crack.patched.at <= at
      ? { ...crack, patchDry: { id, at } }
      : crack,
  );
  return { ...piece, cracks };
}

/** A shell that is dipped or patched hangs in no kiln: a burnout nobody ended was stopped by then. */
const outOfKiln = (piece: Piece, { id, at }: { id: string; at: number }): Piece =>
  withBurnout(piece, (run) => ({ ...run, ended: { id, at, result: "stopped" } }));

type Burnout = Piece["burnouts"][number];

/** Changes the burnout that is running; a reading or an end without one says nothing. */
function withBurnout(piece: Piece, change: (run: Burnout) => Burnout): Piece {
  const last = piece.burnouts.at(-1);
  if (last === undefined || last.ended !== null) return piece;
  return { ...piece, burnouts: [...piece.burnouts.slice(0, -1), change(last)] };
}
