import { expect, test } from "vitest";
import { line } from "../../../tests/fixtures/logLines.ts";
import { bucketStandingOf } from "../bucket/bucketStanding.ts";
import { foldRun } from "../fire/foldRun.ts";
import { leftOutOf } from "./leftOut.ts";
import { ranges } from "../entries/ranges.ts";
import { runStanding } from "../fire/runStanding.ts";
import { given, later, made, shop } from "../../../tests/logs/testBucket.ts";

const { low, high } = ranges.kilnC;
const run = [
  line("run/a", "run-planned", {
    purpose: "fire",
    kilnId: null,
    pieceIds: [],
    startC: 20,
    segments: [{ kind: "ramp", toC: 800, rateKPerH: 200 }],
  } as never),
  line("run/a", "run-started", { kilnC: 20 }, { at: Date.UTC(2026, 9, 5, 8) }),
];
const read = (kilnC: number) => line("run/a", "run-read", { kilnC }, { at: Date.UTC(2026, 9, 5, 9) });

test.each([low - 1, high + 1, 2500])("a kiln reading of %d °C is left out and named", (kilnC) => {
  const reading = read(kilnC);
  const entries = [...run, reading];
  expect(leftOutOf(entries)).toEqual([
    { entryId: reading.id, at: reading.at, key: "kilnC", value: kilnC, low, high },
  ]);
  const state = foldRun("a", entries);
  expect(state && runStanding(state, reading.at + 1)?.judged.lastReading).toBeNull();
});

test.each([low, high])("one of %d °C is heard, and nothing is named", (kilnC) => {
  const entries = [...run, read(kilnC)];
  expect(leftOutOf(entries)).toEqual([]);
  const state = foldRun("a", entries);
  expect(state && runStanding(state, Date.UTC(2026, 9, 5, 10))?.judged.lastReading?.kilnC).toBe(kilnC);
});

test("a top-up of a million kilograms leaves the bucket as it was before it", () => {
  const before = bucketStandingOf(given({ mixes: [made] }), shop, later);
  const top = { id: "t1", at: later - 1000, flourKg: ranges.makingsKg.high + 1, solKg: 0, waterKg: 0 };
  const after = bucketStandingOf(
    given({ mixes: [made], tops: [{ ...top, why: "volume" } as never] }),
    shop,
    later,
  );
  expect(after.ledger?.massKg).toBe(before.ledger?.massKg);
  expect(before.ledger).not.toBeNull();
});
