import type { Surroundings } from "../src/logbook/piece/surroundings.ts";
import type { PiecePlan } from "../src/logbook/entries/pieceBodies.ts";
import { foldRun } from "../src/logbook/fire/foldRun.ts";
import { foldPiece } from "../src/logbook/log/fold.ts";
import { makeMemo } from "../src/logbook/log/memo.ts";
import { standingOf } from "../src/logbook/piece/buildStanding.ts";
import type { Piece } from "../src/logbook/piece/piece.ts";
import type { Standing } from "../src/logbook/piece/standing.ts";
import type { Ahead } from "../src/logbook/planning/coatsAhead.ts";
import { demoEntries } from "../src/ui/shop/demo/demoShop.ts";
import { stamped } from "./logs/testStamps.ts";
import { entriesOf, idsOf, surroundingsOf } from "./readDemo.ts";

export const aheadNow = Date.parse("2026-03-04T14:02:00Z");

/** The demo shop as a look ahead reads it, with changes to the plans of its pieces by id. */
export function demoAhead(changes: Readonly<Record<string, Partial<PiecePlan>>> = {}): {
  readonly ahead: Ahead;
  readonly standings: readonly Standing[];
  readonly standing: (id: string) => Standing;
} {
  const entries = demoEntries(aheadNow, "UTC");
  const pieces = idsOf(entries, "piece").flatMap((id): readonly Piece[] => {
    const piece = foldPiece(id, entriesOf(entries, "piece", id));
    return piece === null ? [] : [{ ...piece, plan: { ...piece.plan, ...changes[id] } }];
  });
  const runs = new Map(
    idsOf(entries, "run").flatMap((id) => {
      const run = foldRun(id, entriesOf(entries, "run", id));
      return run === null ? [] : [[id, run] as const];
    }),
  );
  const around: Surroundings = stamped(pieces, { ...surroundingsOf(entries), runs });
  const standings = pieces.map((piece) => standingOf(piece, around, aheadNow));
  return {
    ahead: { around, memo: makeMemo() },
    standings,
    standing: (id) => {
      const found = standings.find(({ piece }) => piece.id === id);
      if (found === undefined) throw new Error(`no demo piece ${id}`);
      return found;
    },
  };
}
