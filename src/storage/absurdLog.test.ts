import { expect, test } from "vitest";
import log from "../../tests/fixtures/log-v2.json" with { type: "json" };
import { changed, faultsOf, figuresOf } from "../../tests/numbers/numberRow.ts";
import { entriesOf, idsOf, surroundingsOf } from "../../tests/readDemo.ts";
import { bucketStandingOf } from "../logbook/bucketStanding.ts";
import { standingOf } from "../logbook/buildStanding.ts";
import { coatAdvice, placesOfPiece } from "../logbook/coatAdvice.ts";
import { dipProposal } from "../logbook/dipProposal.ts";
import { dipsFrom, takenBy } from "../logbook/dippedOut.ts";
import { pairsOf } from "../logbook/dryingPairs.ts";
import type { Entry } from "../logbook/entry.ts";
import { fireFacts } from "../logbook/fireFacts.ts";
import { foldPiece } from "../logbook/fold.ts";
import type { Run } from "../logbook/fireStates.ts";
import { foldMelt } from "../logbook/foldMelt.ts";
import { foldPour } from "../logbook/foldPour.ts";
import { foldRun } from "../logbook/foldRun.ts";
import { lossMemory, meltSeen } from "../logbook/furnaceMemory.ts";
import { learnGains, wallReads, weighedCoats } from "../logbook/learnedGains.ts";
import { shellCost } from "../logbook/pieceCost.ts";
import { shellCourse } from "../logbook/pourCourse.ts";
import { pourStanding, sensedRun } from "../logbook/pourStanding.ts";
import { energyKWhOf } from "../logbook/runBasis.ts";
import { peakAndHold, plannedSegments, readSegments, runStanding } from "../logbook/runStanding.ts";
import { soundRun } from "../logbook/soundRun.ts";
import type { Bucket } from "../logbook/piece.ts";
import type { Standing } from "../logbook/standing.ts";
import { stockView } from "../logbook/stockView.ts";
import { findingsFor, reviewFindingsFor } from "../rules/all.ts";
import { dueTimes } from "../ui/due/dueTimes.ts";
import { stepDues } from "../ui/run/runDues.ts";
import { bucketSpans } from "../ui/timeline/bucketSpans.ts";
import { dipWishes } from "../ui/timeline/dipWishes.ts";
import { roomLanes } from "../ui/timeline/timelineRows.ts";
import { timelineSpan } from "../ui/timeline/timelineScale.ts";
import { bodySchemas } from "./bodySchemas.ts";
import { startingSettings } from "./settings.ts";

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
    roomLanes(standings, span),
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
      return standing === null ? null : stepDues(run.id, standing, now);
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
