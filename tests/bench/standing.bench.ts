import { expect, test } from "@playwright/test";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { standingOf } from "../../src/logbook/piece/buildStanding.ts";
import { readingsOf } from "../../src/logbook/air/airLog.ts";
import type { AirReading } from "../../src/logbook/piece/piece.ts";
import { monday, testLog, testShop } from "../logs/testLog.ts";
import { streamLog } from "../logs/testStreamLog.ts";
import { figuresOf, show } from "./measure.ts";

const taken = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** `timed` beside a plain pass over the same rows: medians of at least 15 after one run to warm up. */
function beside(name: string, floor: () => void, timed: (i: number) => void): void {
  for (let i = 0; i < 3; i++) floor();
  timed(0);
  const low = figuresOf(Array.from({ length: 200 }, () => taken(floor)));
  const high = figuresOf(Array.from({ length: 15 }, (_, i) => taken(() => timed(i + 1))));
  console.log(`\n${show(`${name}: one pass (floor)`, low)}`);
  console.log(show(name, high));
  console.log(`  in floors: ${(high.median / low.median).toFixed(0)}\n`);
}

test("two hundred pieces of up to nine coats in a room of fifty readings, beside one pass over the readings a coat", () => {
  const readings: readonly AirReading[] = Array.from({ length: 50 }, (_, i) => ({
    id: `r${i}`,
    at: monday + i * 3 * hourMs,
    airC: 19 + 5 * Math.sin(i / 1.3),
    rh: 0.55 - 0.15 * Math.sin(i / 1.3),
    air: "draught",
  }));
  const pieces = Array.from({ length: 200 }, (_, n) => {
    const geometry = (["open", "corner", "recess", "blind"] as const)[n % 4];
    const log = testLog({ recipeId: "start-general", alloyId: "c87300", headM: 0.3, geometry });
    for (let i = 0; i <= n % 9; i++) log.coat(monday + (i * 14 + (n % 7)) * hourMs);
    return log.piece();
  });
  const coats = pieces.reduce((sum, piece) => sum + piece.coats.length, 0);
  const shop = testShop(readings);
  const now = monday + 150 * hourMs;
  let sum = 0;
  beside(
    "standing of 200 pieces",
    () => {
      for (let i = 0; i < coats; i++) for (const { at, airC, rh } of readings) sum += at + airC + rh;
    },
    (i) => {
      for (const piece of pieces) standingOf(piece, shop, now + i * 30_000);
    },
  );
  expect(sum).toBeGreaterThan(0);
});

test("sixty days of five-minute readings unpacked, beside one pass over them", () => {
  const log = streamLog("room/first");
  const afterS = Array.from({ length: 288 }, (_, i) => i * 300);
  const body = { source: "x", air: null, afterS, airC: afterS.map(() => 20), rh: afterS.map(() => 0.5) };
  for (let i = 0; i < 60; i++) {
    const at = monday + i * 24 * hourMs;
    log.run({ do: "log", stream: "room/first", type: "air-logged", body, at }, monday + 9999 * hourMs);
  }
  const entries = log.entries();
  let sum = 0;
  beside(
    "17,280 readings unpacked",
    () => {
      for (let day = 0; day < 60; day++)
        for (const [i, after] of afterS.entries()) sum += after + (body.airC[i] ?? 0) + (body.rh[i] ?? 0);
    },
    () => {
      expect(readingsOf(entries)).toHaveLength(17_280);
    },
  );
  expect(sum).toBeGreaterThan(0);
});
