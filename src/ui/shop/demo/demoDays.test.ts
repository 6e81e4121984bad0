import { TZDate } from "@date-fns/tz";
import fc from "fast-check";
import { expect, test } from "vitest";
import { stamped } from "../../../../tests/logs/testStamps.ts";
import { entriesOf, idsOf, surroundingsOf } from "../../../../tests/readDemo.ts";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { foldRun } from "../../../logbook/fire/foldRun.ts";
import { foldPiece } from "../../../logbook/log/fold.ts";
import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { reviewFindingsFor, reviewVerdict } from "../../../rules/all.ts";
import { demoEntries } from "./demoShop.ts";

/** Any minute of two years, in a zone that changes its clocks, in one that does not, and in one half an hour off. */
const moments = fc.record({
  now: fc.integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2028, 0, 1) }),
  zone: fc.constantFrom("Europe/Berlin", "America/Denver", "Asia/Kolkata"),
});

/** Done by people's hands, at the time it says. */
const byHand = new Set<Entry["type"]>([
  "piece-started",
  "piece-moved",
  "coat-dipped",
  "dryness-seen",
  "wall-measured",
  "crack-patched",
  "wire-wrapped",
  "review-signed",
  "shell-preheated",
  "metal-poured",
  "shell-knocked-out",
  "outcome-told",
  "piece-finished",
  "piece-scrapped",
  "melt-started",
  "run-started",
]);

test("nobody dips, pours or signs at night, and nothing lies in the future, whenever the demo is loaded", () =>
  fc.assert(
    fc.property(moments, ({ now, zone }) => {
      const entries = demoEntries(now, zone);
      expect(entries.filter(({ at }) => at >= now)).toEqual([]);
      const odd = entries
        .filter(({ type, stream }) => byHand.has(type) || stream.startsWith("bucket/"))
        .map(({ at, type, stream }) => ({ hour: new TZDate(at, zone).getHours(), type, stream }))
        // A change of clocks in the month shifts what lies before it by an hour.
        .filter(({ hour }) => hour < 6 || hour >= 21);
      expect(odd).toEqual([]);
    }),
    { numRuns: 30 },
  ));

/** A piece and all round it as it stood at a time. */
function standingAt(all: readonly Entry[], id: string, at: number) {
  const entries = all.filter((entry) => entry.at < at);
  const piece = foldPiece(id, entriesOf(entries, "piece", id));
  if (piece === null) throw new Error(`${id} had not begun`);
  const runs = new Map(
    idsOf(entries, "run").flatMap((run) => {
      const folded = foldRun(run, entriesOf(entries, "run", run));
      return folded === null ? [] : [[run, folded] as const];
    }),
  );
  return standingOf(piece, stamped([piece], { ...surroundingsOf(entries), runs }), at);
}

test("every review was signed as it stood, and none of them at hold", () =>
  fc.assert(
    fc.property(moments, ({ now, zone }) => {
      const all = demoEntries(now, zone);
      const signed = all.flatMap((entry) => (entry.type === "review-signed" ? [entry] : []));
      expect(signed).toHaveLength(7);
      for (const { stream, at, body } of signed) {
        const findings = reviewFindingsFor(standingAt(all, stream.slice("piece/".length), at));
        expect([stream, body.verdict]).toEqual([stream, reviewVerdict(findings)]);
        expect(body.verdict).not.toBe("hold");
      }
    }),
    { numRuns: 3 },
  ));

test("no melt gave its pieces more than was poured, nor more metal than was charged", () => {
  const all = demoEntries(Date.UTC(2026, 2, 4, 14), "UTC");
  const poured = all.flatMap((entry) => (entry.type === "metal-poured" ? [entry.body] : []));
  const melts = idsOf(all, "melt").flatMap((id) => {
    const entries = entriesOf(all, "melt", id);
    const charged = entries.flatMap(({ body }) => ("items" in body ? body.items : []));
    return entries.flatMap((entry) =>
      entry.type === "melt-ended"
        ? [{ id, body: entry.body, chargedKg: charged.reduce((sum, { massKg }) => sum + massKg, 0) }]
        : [],
    );
  });
  expect(melts).toHaveLength(4);
  for (const { id, body, chargedKg } of melts) {
    const taken = poured.filter(({ meltId }) => meltId === id);
    expect(taken).toHaveLength(1);
    expect(taken.reduce((sum, { massKg }) => sum + (massKg ?? 0), 0)).toBeLessThanOrEqual(body.pouredKg);
    expect(body.pouredKg + body.piggedKg).toBeLessThan(chargedKg);
  }
});

test("one kiln never holds two fires at once, and each shell was in it before its metal", () => {
  const all = demoEntries(Date.UTC(2026, 2, 4, 14), "UTC");
  const fires = idsOf(all, "run")
    .flatMap((id) => foldRun(id, entriesOf(all, "run", id)) ?? [])
    .flatMap(({ startedAt, ended }) =>
      startedAt === null ? [] : [{ startedAt, endedAt: ended?.at ?? Infinity }],
    )
    .toSorted((a, b) => a.startedAt - b.startedAt);
  expect(fires).toHaveLength(3);
  for (const [place, fire] of fires.entries())
    expect(fire.endedAt).toBeLessThan(fires[place + 1]?.startedAt ?? Infinity);
  for (const id of idsOf(all, "piece")) {
    const entries = entriesOf(all, "piece", id);
    const firedAt = entries.find(({ type }) => type === "shell-fired")?.at ?? null;
    const pouredAt = entries.find(({ type }) => type === "metal-poured")?.at ?? null;
    if (pouredAt !== null) expect(firedAt).toBeLessThan(pouredAt);
  }
});
