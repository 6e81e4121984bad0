import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { dipProposal } from "../../../logbook/dip/dipProposal.ts";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import { monday, testLog, testShop } from "../../../../tests/logs/testLog.ts";
import { bucketSpans } from "./bucketSpans.ts";
import { dipWishes } from "../../../logbook/dip/dipWishes.ts";
import { roomRows } from "./timelineRows.ts";
import { timelineSpan } from "./timelineScale.ts";

const days = 20;
/** A sensor that read every five minutes for twenty days. */
const readings: readonly AirReading[] = Array.from({ length: days * 288 }, (_, i) => ({
  id: `r${i}`,
  at: monday + i * 300_000,
  airC: 19 + 4 * Math.sin(i / 46),
  rh: 0.6 - 0.2 * Math.sin(i / 46),
  air: "room-fan",
}));
const now = monday + days * 24 * hourMs;
/** Thirty pieces of fifteen coats: half have their recipe done, half want its last; some have three kinds of place. */
const pieces = Array.from({ length: 30 }, (_, n) => {
  const pockets = n % 3 === 0 ? (["recess", "blind"] as const) : undefined;
  const log = testLog({ recipeId: "start-general", pockets });
  for (let i = 0; i < 15; i++)
    log.coat(monday + (i * 28 + n) * hourMs, i < (n % 2 === 0 ? 9 : 8) ? {} : { step: null });
  return { ...log.piece(), id: `piece-${n}` };
});
const hours = [
  { fromMin: 480, toMin: 600 },
  { fromMin: 1020, toMin: 1260 },
];

test("thirty pieces of fifteen coats each have their row, and each that wants a dip gets one proposed or is left", () => {
  const shop = testShop(readings);
  const standings = pieces.map((piece) => standingOf(piece, shop, now));
  const span = timelineSpan(now);
  const wishes = dipWishes(standings, [], now).wanted.map(({ wish }) => wish);
  const { visits, left } = dipProposal({ wishes, hours: bucketSpans(hours, span), now });
  expect(roomRows(standings, span)[0]?.rows).toHaveLength(30);
  const proposed = visits.flatMap(({ dips }) => dips.flatMap(({ pieces: all }) => all));
  expect(proposed.length + left.length).toBe(15);
});
