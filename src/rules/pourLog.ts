import { standingOf } from "../logbook/piece/buildStanding.ts";
import { streamOf, type Entry } from "../logbook/entries/entry.ts";
import type { Melt, Pour, Run } from "../logbook/fire/fireStates.ts";
import { foldPiece } from "../logbook/log/fold.ts";
import { foldMelt } from "../logbook/pour/foldMelt.ts";
import { foldPour } from "../logbook/pour/foldPour.ts";
import { foldRun } from "../logbook/fire/foldRun.ts";
import { shellCourse } from "../logbook/pour/pourCourse.ts";
import { sheetLines, type SheetLine } from "../logbook/pour/pourSheet.ts";
import { pourSupply, type PourSupply } from "../logbook/pour/pourSupply.ts";
import { readTold } from "../logbook/pour/pourTold.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import type { Surroundings } from "../logbook/piece/surroundings.ts";
import { findingsFor } from "./all.ts";
import type { Finding } from "./finding.ts";

/** Every line of a pour, its pieces, its kiln runs and its melt, strikes too, and what their sums need beside them. */
export type PourLog = {
  readonly id: string;
  readonly entries: readonly Entry[];
  readonly around: Surroundings;
};

export type HeldPiece = { readonly pieceId: string; readonly name: string; readonly finding: Finding };

/** What was known of a pour at one time. */
export type PourKnown = {
  readonly at: number;
  readonly pour: Pour;
  readonly shells: readonly { readonly standing: Standing; readonly findings: readonly Finding[] }[];
  readonly supply: PourSupply;
  readonly run: Run | null;
  readonly melt: Melt | null;
  readonly lines: readonly SheetLine[];
  readonly holds: readonly HeldPiece[];
  /** When the first shell left the kiln, or metal first ran; null before. */
  readonly begunAt: number | null;
};

/**
 * The pour as it was known at `at`: by what had been written down by then, not by what was told later. Null before it
 * was planned.
 */
export function pourKnownAt({ id, entries, around }: PourLog, at: number): PourKnown | null {
  const known = entries.filter(({ recordedAt }) => recordedAt <= at);
  const own = (stream: string): readonly Entry[] => known.filter((entry) => entry.stream === stream);
  const pour = foldPour(id, own(streamOf("pour", id)));
  if (pour === null) return null;
  const { runId, meltId } = pour.plan;
  const pieces = pour.pieceIds.flatMap(
    (pieceId) => foldPiece(pieceId, own(streamOf("piece", pieceId))) ?? [],
  );
  const runIds = new Set([
    ...pieces.flatMap((piece) => piece.runIds),
    ...(runId === undefined ? [] : [runId]),
  ]);
  const runs = new Map(
    [...runIds].flatMap((one): readonly (readonly [string, Run])[] => {
      const run = foldRun(one, own(streamOf("run", one)));
      return run === null ? [] : [[one, run]];
    }),
  );
  const then: Surroundings = {
    ...around,
    runs,
    readings: new Map(
      [...around.readings].map(([room, readings]) => [room, readings.filter((one) => one.at <= at)]),
    ),
  };
  const shells = pieces.map((piece) => {
    const standing = standingOf(piece, then, at);
    return { standing, findings: findingsFor(standing) };
  });
  const run = runs.get(runId ?? "") ?? null;
  const melt = meltId === undefined ? null : foldMelt(meltId, own(streamOf("melt", meltId)));
  const told = readTold(pour.plan);
  const supply = pourSupply({
    standings: shells.map(({ standing }) => standing),
    melt,
    shop: around.shop,
    told: {
      metalKg: told.metalKg,
      // What was told is in the plan's order; a piece that is not on this device leaves its place.
      thinnestMm: pieces.map((piece) => told.thinnestMm[pour.pieceIds.indexOf(piece.id)] ?? null),
    },
  });
  const begun = pieces.flatMap((piece) => {
    const { out, begun: metal, poured } = shellCourse(piece, id);
    return (out ?? metal ?? poured)?.at ?? [];
  });
  return {
    at,
    pour,
    shells,
    supply,
    run,
    melt,
    lines: sheetLines({ pour, shells, run, melt, supply, now: at }),
    holds: shells.flatMap(({ standing: { piece }, findings }) =>
      findings
        .filter(({ level }) => level === "hold")
        .map((finding) => ({ pieceId: piece.id, name: piece.plan.name, finding })),
    ),
    begunAt: begun.length === 0 ? null : Math.min(...begun),
  };
}
