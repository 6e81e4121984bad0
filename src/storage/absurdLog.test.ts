import { expect, test } from "vitest";
import { changed, faultsOf, figuresOf } from "../../tests/numbers/numberRow.ts";
import { entriesOf, idsOf, surroundingsOf } from "../../tests/readDemo.ts";
import { bucketStandingOf } from "../logbook/bucket/bucketStanding.ts";
import { standingOf } from "../logbook/piece/buildStanding.ts";
import { coatAdvice, placesOfPiece } from "../logbook/drying/coatAdvice.ts";
import { dipsFrom, takenBy } from "../logbook/bucket/dippedOut.ts";
import { pairsOf } from "../logbook/drying/dryingPairs.ts";
import type { Entry } from "../logbook/entries/entry.ts";
import { fireFacts } from "../logbook/fire/fireFacts.ts";
import { foldPiece } from "../logbook/log/fold.ts";
import { foldMelt } from "../logbook/pour/foldMelt.ts";
import { foldPour } from "../logbook/pour/foldPour.ts";
import { foldRun } from "../logbook/fire/foldRun.ts";
import { lossMemory, meltSeen } from "../logbook/fire/furnaceMemory.ts";
import { learnGains, wallReads, weighedCoats } from "../logbook/drying/learnedGains.ts";
import { shellCost } from "../logbook/piece/pieceCost.ts";
import { shellCourse } from "../logbook/pour/pourCourse.ts";
import { pourStanding, sensedRun } from "../logbook/pour/pourStanding.ts";
import { readSegments } from "../logbook/fire/readSegments.ts";
import { peakAndHold } from "../logbook/fire/runHeat.ts";
import { runStanding, plannedSegments } from "../logbook/fire/runStanding.ts";
import { stockView } from "../logbook/shop/stockView.ts";
import { dipProposal } from "../logbook/dip/dipProposal.ts";
import type { Run } from "../logbook/fire/fireStates.ts";
import { energyKWhOf } from "../logbook/fire/runBasis.ts";
import { soundRun } from "../logbook/fire/soundRun.ts";
import type { Bucket } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { findingsFor, reviewFindingsFor } from "../rules/all.ts";
import { bodySchemas } from "../logbook/entries/allBodies.ts";
import { dueTimes } from "../ui/base/alarm/dueTimes.ts";
import { runDues } from "../ui/fire/run/runDues.ts";
import { bucketSpans } from "../ui/making/timeline/bucketSpans.ts";
import { dipWishes } from "../logbook/dip/dipWishes.ts";
import { roomRows } from "../ui/making/timeline/timelineRows.ts";
import { timelineSpan } from "../ui/making/timeline/timelineScale.ts";
import { startingSettings } from "./settings.ts";
import { makeFormat } from "../ui/base/format/units.ts";
import log from "../../tests/fixtures/log-v2.json" with { type: "json" };

const written = log.entries as unknown as readonly Entry[];
const now = Math.max(...written.map(({ at }) => at)) + 3_600_000;

/** Sizes to try at each figure: the furthest the reading schema lets in are asked about. */
const sizes = [0, 1e-9, 0.5, 1, 10, 60, 100, 200, 1000, 2500, 1e4, 1e5, 1e6, 1e7, 1e9, 1e12, 1e300];
const tried = [...sizes.map((size) => -size).toReversed(), ...sizes];

const known = <T>(value: T | null): readonly T[] => (value === null ? [] : [value]);

/** Due times and the timeline, as their pages put them together. */
function askedOfTime(standings: readonly Standing[], buckets: readonly Bucket[]): unknown {
  const span = timelineSpan(now);
  const hours = bucketSpans(startingSettings.bucketHours, span);
  const wishes = dipWishes(standings, buckets, now);
  const wanted = wishes.wanted.map(({ wish }) => wish);
  return [
    dueTimes(standings),
    roomRows(standings, span),
    wishes,
    dipProposal({ wishes: wanted, hours, now }),
  ];
}

/** Energy of a run as it was planned and as it was read, as its page shows it. */
function energiesOf({ plan, segments, startedAt, startedC, readings }: Run): unknown {
  const startC = startedC ?? plan.startC;
  const asRead = readSegments(readings, { startedAt: startedAt ?? now, startC });
  return [plannedSegments(segments), asRead].map((steps) =>
    plan.basis === undefined ? null : energyKWhOf(plan.basis, { segments: steps, startC }),
  );
}

/** All that screens ask of a log. */
function allThatIsAsked(entries: readonly Entry[]): unknown {
  const around = surroundingsOf(entries);
  const pieces = idsOf(entries, "piece").flatMap((id) =>
    known(foldPiece(id, entriesOf(entries, "piece", id))),
  );
  const runs = idsOf(entries, "run").flatMap((id) => known(foldRun(id, entriesOf(entries, "run", id))));
  const melts = idsOf(entries, "melt").flatMap((id) => known(foldMelt(id, entriesOf(entries, "melt", id))));
  const pours = idsOf(entries, "pour").flatMap((id) => known(foldPour(id, entriesOf(entries, "pour", id))));
  const surroundings = { ...around, runs: new Map(runs.map((run) => [run.id, run])) };
  const standings = pieces.map((piece) => standingOf(piece, surroundings, now));
  const { shop, buckets, recipes } = surroundings;
  const learned = learnGains(
    pieces.flatMap((piece) => weighedCoats(piece, { surroundings, now })),
    pieces.flatMap(wallReads),
  );
  const gains = learned.coats;
  const taken = takenBy(pieces, { shop, buckets, gains });
  return [
    learned,
    askedOfTime(standings, [...buckets.values()]),
    runs.map((run) => {
      const standing = runStanding(run, now);
      return standing === null
        ? null
        : runDues(run.id, standing, { now, names: [], format: makeFormat("metric", "en-GB") });
    }),
    standings.map((standing) => ({
      drying: standing.drying,
      outer: standing.outer,
      wall: standing.wall,
      finalDry: standing.finalDry,
      action: standing.action,
      findings: [findingsFor(standing), reviewFindingsFor(standing)],
      facts: fireFacts(standing, "fused-silica"),
      advice: [null, ...placesOfPiece(standing)].map((place) => coatAdvice(standing, place)),
    })),
    pieces.map((piece) => [
      pairsOf(piece, { surroundings, now }),
      shellCost(piece, { recipe: recipes.get(piece.plan.recipeId ?? "") ?? null, buckets, shop, gains }),
      pours.map(({ id }) => shellCourse(piece, id)),
    ]),
    runs.map((run) => [
      runStanding(run, now)?.judged,
      peakAndHold(run.readings),
      readSegments(run.readings, { startedAt: run.startedAt ?? now, startC: run.startedC ?? 20 }),
      sensedRun(run, now),
      energiesOf(soundRun(run)),
    ]),
    melts.map((melt) => meltSeen(melt, shop)),
    lossMemory({ family: "bronze", melts, shop }),
    pours.map((pour) => pourStanding(pour, { now, people: 2, sensed: [] })),
    [...buckets.values()].map((bucket) => bucketStandingOf(bucket, shop, now, dipsFrom(taken, bucket.id))),
    stockView({ shop, buckets: [...buckets.values()], taken, now }),
  ];
}

test("the fixture as it is gives no number that is none", () => {
  expect(faultsOf(allThatIsAsked(written), true)).toEqual([]);
});

test("no figure the reading schema lets in makes a screen throw or show a number that is none", () => {
  const faults: string[] = [];
  for (const [i, entry] of written.entries()) {
    const schema = bodySchemas[entry.type];
    for (const place of figuresOf(entry.body)) {
      const put = (figure: number): unknown => changed(entry.body, new Map([[place, () => figure]]));
      const letIn = tried.filter((figure) => schema.safeParse(put(figure)).success);
      for (const figure of new Set([letIn[0], letIn.at(-1)])) {
        if (figure === undefined) continue;
        const altered = { ...entry, body: put(figure) } as Entry;
        try {
          const [fault] = faultsOf(allThatIsAsked(written.with(i, altered)), true);
          if (fault !== undefined) faults.push(`${entry.type} ${place} = ${figure}: ${fault}`);
        } catch (error) {
          const where = (error as Error).stack
            ?.split("\n")
            .slice(1, 6)
            .map((l) => /(\w+\.ts):(\d+)/.exec(l)?.[0])
            .join(" < ");
          faults.push(`${entry.type} ${place} = ${figure}: ${String(error)} @ ${where}`);
        }
      }
    }
  }
  expect(faults).toEqual([]);
}, 240_000);
