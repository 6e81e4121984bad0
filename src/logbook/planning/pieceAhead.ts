import type { Alloy } from "../../trade/metals/alloy.ts";
import type { Run } from "../fire/fireStates.ts";
import { fireFacts } from "../fire/fireFacts.ts";
import { runStanding } from "../fire/runStanding.ts";
import { shellHeatOf, type ShellHeat } from "../fire/shellHeat.ts";
import type { Phase } from "../piece/piece.ts";
import { openCracks, wetPatches } from "../piece/crackStates.ts";
import { metalOf } from "../piece/pieceMetal.ts";
import type { Standing } from "../piece/standing.ts";
import { leaveOf, type PlannedShell } from "../pour/leaveHeat.ts";
import { pourShell } from "../pour/pourShells.ts";
import { startingTold } from "../pour/pourTold.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { standingAhead, coatsToCome, type Ahead, type CoatToCome } from "./coatsAhead.ts";
import { soonestWay, type NoTime, type SoonestWay } from "./coatTimes.ts";
import type { WorkSpans } from "./workSpans.ts";

/** Why nothing is planned of a piece until someone has done or said something. */
export type Stop =
  | { readonly code: "crack" }
  | { readonly code: "cover-patch" }
  | { readonly code: "wet-patch" }
  | { readonly code: "held" }
  | { readonly code: "no-recipe" }
  | { readonly code: "in-kiln" }
  | { readonly code: "no-time"; readonly why: NoTime };

/** One piece as a pour day sees it. Times are epoch ms. */
export type PieceAhead = {
  readonly id: string;
  readonly name: string;
  /** As it stands now. */
  readonly standing: Standing;
  readonly coats: readonly CoatToCome[];
  /** Null where it is not held up. */
  readonly stop: Stop | null;
  /** The soonest way to a shell that is dry for fire, by the cautious figures and by the middle ones. */
  readonly ways: Readonly<Record<"late" | "middle", SoonestWay>>;
  /** As it stands with all coats on, dry; null where no way leads there. */
  readonly dry: Standing | null;
  readonly alloyId: string | null;
  readonly alloy: Alloy | null;
  readonly metalKg: number | null;
  readonly heat: ShellHeat | null;
  /** What it leaves the kiln with: as its pour is planned, else as a pour's plan starts. */
  readonly leaveC: number;
  /** Box round its mesh with the wall about it; null without a mesh. */
  readonly litre: number | null;
  readonly shell: { readonly massKg: number; readonly isKnown: boolean };
};

const beforeMetal: readonly Phase[] = [
  "coating",
  "reviewed",
  "dewaxed",
  "burnout",
  "burnt-out",
  "fired",
  "preheated",
];

/** True for a piece that still waits for metal. */
export const waitsForMetal = ({ piece }: Pick<Standing, "piece">): boolean =>
  !piece.archived && beforeMetal.includes(piece.phase);

type From = {
  readonly ahead: Ahead;
  readonly hours: WorkSpans;
  /** True where a finding holds it against a further coat. */
  readonly isHeld: boolean;
  /** What the plan of its pour says of it; left out where it is in none. */
  readonly planned?: PlannedShell | undefined;
};

/** Looks ahead for one piece, from the time of its standing. It takes some tenths of a second where many coats are left. */
export function pieceAhead(standing: Standing, { ahead, hours, isHeld, planned }: From): PieceAhead {
  const { piece } = standing;
  const { shop, runs } = ahead.around;
  const coats = piece.phase === "coating" ? coatsToCome(standing) : [];
  const held = stopOf(standing, isHeld);
  const ways = held === null ? waysOf(standing, { ahead, hours }, runs) : none;
  const best = ways.late.ok ? ways.late : ways.middle;
  const last = best.ok ? (best.pieces.at(-1) ?? piece) : null;
  const dry =
    last === null || !best.ok
      ? null
      : last === piece && piece.phase !== "coating"
        ? standing
        : standingAhead(last, ahead, Math.max(best.dryAt, standing.now));
  const alloyId = piece.plan.alloyId ?? null;
  const alloy = alloyId === null ? null : ownAlloy(alloyId, shop);
  const metalKg = metalOf(piece, alloy);
  const shell = pourShell(dry ?? standing, { toldMm: planned?.thinnestMm ?? null, metalKg, alloy });
  const { shell: mass } = fireFacts(dry ?? standing, startingTold.family);
  return {
    id: piece.id,
    name: piece.plan.name,
    standing,
    coats,
    stop: held ?? (best.ok ? null : stopBy(piece.phase, best.why)),
    ways,
    dry,
    alloyId,
    alloy,
    metalKg,
    heat: alloy === null ? null : shellHeatOf(alloy, shell.thinnestMm),
    leaveC: leaveOf(dry ?? standing, { shop, planned }),
    litre: litreOf(dry ?? standing),
    shell: { massKg: mass.massKg, isKnown: mass.source !== "starting" },
  };
}

/** Cracks stop a shell in every phase. A patch that a coat goes over is answered for by that coat. */
function stopOf({ piece, recipe, next, action, cracks }: Standing, isHeld: boolean): Stop | null {
  if (openCracks(cracks).length > 0) return { code: "crack" };
  const isCoating = piece.phase === "coating";
  if (isCoating && recipe === null) return { code: "no-recipe" };
  if (isCoating && next === null && action.kind === "dip") return { code: "cover-patch" };
  if (isCoating && next !== null) return isHeld ? { code: "held" } : null;
  return wetPatches(cracks).length > 0 ? { code: "wet-patch" } : null;
}

const stopBy = (phase: Phase, why: NoTime): Stop =>
  phase === "burnout" ? { code: "in-kiln" } : { code: "no-time", why };

const none: PieceAhead["ways"] = {
  late: { ok: false, why: "not-known" },
  middle: { ok: false, why: "not-known" },
};

function waysOf(
  standing: Standing,
  from: Pick<From, "ahead" | "hours">,
  runs: ReadonlyMap<string, Run> | undefined,
) {
  const { piece, now } = standing;
  if (piece.phase === "coating") {
    const late = soonestWay({ standing, ...from }, "late");
    // With no coat left there is only the last drying, and that has one figure.
    return { late, middle: standing.next === null ? late : soonestWay({ standing, ...from }, "middle") };
  }
  // A signed shell is taken as dry; what its fire finds damp, its kiln plan says.
  const way = readyFrom(piece.phase === "burnout" ? kilnEndsAt(standing, runs) : now);
  return { late: way, middle: way };
}

const readyFrom = (at: number | null): SoonestWay =>
  at === null ? { ok: false, why: "not-known" } : { ok: true, dips: [], pieces: [], readyAt: [], dryAt: at };

/** When the run a piece is in is over by its plan and readings; null where it is in none that is known. */
function kilnEndsAt({ piece, now }: Standing, runs: ReadonlyMap<string, Run> | undefined): number | null {
  const run = runs?.get(piece.burnouts.at(-1)?.runId ?? "");
  const judged = run === undefined ? null : runStanding(run, now)?.judged;
  return judged ? Math.max(now, judged.endsAt) : null;
}

/** The box round the mesh as it was measured, with its wall on every side, litres. */
function litreOf({ piece, wall }: Standing): number | null {
  const box = piece.patterns.at(-1)?.boxMm;
  if (box === undefined) return null;
  return box.reduce((product, mm) => product * (mm + 2 * wall.reachedMm), 1) / 1e6;
}
