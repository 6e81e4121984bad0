import { expect, test } from "@playwright/test";
import { millisecondsInDay as dayMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { standingOf } from "../../src/logbook/piece/buildStanding.ts";
import { learningStamp } from "../../src/logbook/drying/dryingMemory.ts";
import { shopStream } from "../../src/logbook/entries/entry.ts";
import type { Stamps } from "../../src/logbook/log/memo.ts";
import { makeMemo } from "../../src/logbook/log/memo.ts";
import type { AirReading, Piece } from "../../src/logbook/piece/piece.ts";
import type { Surroundings } from "../../src/logbook/piece/surroundings.ts";
import { testLog, testShop } from "../logs/testLog.ts";
import { figuresOf, show } from "./measure.ts";

const pieceCount = 30;
const coatCount = 15;
const days = 60;
const begin = Date.UTC(2025, 5, 2, 8);

/** Five-minute readings of a room that swings with the day and with the week. */
function readingAt(i: number): AirReading {
  const at = begin + i * 5 * minuteMs;
  const day = Math.sin((2 * Math.PI * (at - begin)) / dayMs);
  const week = Math.sin((2 * Math.PI * (at - begin)) / (7 * dayMs));
  return { id: `r${i}`, at, airC: 19 + 4 * day, rh: 0.55 - 0.12 * day + 0.08 * week, air: "room-fan" };
}

/** A shell that gets its coats four days apart, the last one hours before the end. */
function pieceOf(n: number): Piece {
  const geometry = (["open", "corner", "recess"] as const)[n % 3];
  const log = testLog({ recipeId: "start-general", geometry }, begin);
  const apartMs = (days * dayMs - 3 * 3_600_000) / (coatCount - 1);
  for (let i = 0; i < coatCount; i++) log.coat(begin + i * apartMs + n * minuteMs, { step: null });
  return { ...log.piece(), id: `shell-${n}` };
}

const taken = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

test("drying of thirty shells over sixty days, and after one new reading, beside one pass over the readings", () => {
  const all = Array.from({ length: (days * dayMs) / (5 * minuteMs) }, (_, i) => readingAt(i));
  const pieces = Array.from({ length: pieceCount }, (_, n) => pieceOf(n));
  const coatDays = pieceCount * coatCount * (days / coatCount);
  const now = begin + days * dayMs;
  /** As after a read of the store: nothing is the object of before. */
  const readAnew = (count: number): { shop: Surroundings; pieces: readonly Piece[] } => ({
    shop: { ...testShop(structuredClone(all.slice(0, count))), stamps: stampsAt(count) },
    pieces: structuredClone(pieces),
  });
  /** As the store's rows have them: the room's alone changes with a reading. */
  const stampsAt = (count: number): Stamps =>
    new Map<string, string | number>([
      ...pieces.map(({ id }) => [`piece/${id}`, 1] as const),
      ["recipe/start-general", 1],
      [shopStream, 1],
      [learningStamp, 1],
      ["room/first", count],
    ]);

  let sum = 0;
  const passes = Array.from({ length: 200 }, () =>
    taken(() => {
      for (const { at, airC, rh } of all) sum += at + airC + rh;
    }),
  );
  expect(sum).toBeGreaterThan(0);

  const whole = Array.from({ length: 3 }, () => {
    const fresh = readAnew(all.length);
    return taken(() => {
      for (const piece of fresh.pieces) standingOf(piece, fresh.shop, now);
    });
  });

  const memory = makeMemo();
  const added: number[] = [];
  for (let left = 30; left >= 0; left--) {
    const fresh = readAnew(all.length - left);
    const at = now - left * 5 * minuteMs;
    const ms = taken(() => {
      for (const piece of fresh.pieces) standingOf(piece, fresh.shop, at, memory);
    });
    if (left < 30) added.push(ms);
  }

  const pass = figuresOf(passes);
  const first = figuresOf(whole);
  const next = figuresOf(added);
  console.log(
    `\n${pieceCount} shells, ${coatCount} coats each, ${all.length} readings, ${coatDays} coat-days\n`,
  );
  console.log(show("one pass over the readings (floor)", pass));
  console.log(show("all coats from the first reading on", first));
  console.log(show("after one new reading, with a memory", next));
  const us = (ms: number): string => ((1000 * ms) / coatDays).toFixed(2);
  console.log(
    `  a coat-day ${us(first.median)} µs from the start, ${us(next.median)} µs after one new reading`,
  );
  console.log(
    `  in passes over the readings: ${(first.median / pass.median).toFixed(0)} and ${(next.median / pass.median).toFixed(0)}\n`,
  );
  // Incremental or not is no question of speed but of kind: no machine makes the one as dear as the other.
  expect(next.median).toBeLessThan(first.median / 5);
});
