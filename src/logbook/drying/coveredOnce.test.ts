import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { makeMemo } from "../log/memo.ts";
import { stamped } from "../../../tests/logs/testStamps.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const readings = steadyAir({ from: monday, hours: 150, everyH: 3 });

function nineCoats() {
  const log = testLog({ recipeId: "start-general", alloyId: "c87300", headM: 0.3, geometry: "open" });
  for (let i = 0; i < 9; i++) log.coat(monday + (i * 14 + 1) * hourMs);
  return log.piece();
}

const now = monday + 150 * hourMs;

test("a covered coat is worked out once as long as nothing it rests on changes", () => {
  const piece = nineCoats();
  const shop = stamped([piece], testShop(readings));
  const memo = makeMemo();
  const [first, second] = [now, now + 60_000].map((at) => standingOf(piece, shop, at, memo).drying);
  expect(first).toHaveLength(9);
  for (const [i, drying] of (first ?? []).slice(0, -1).entries()) expect(second?.[i]).toBe(drying);
  const reread = standingOf(structuredClone(piece), structuredClone(shop), now, memo).drying;
  expect(reread[0]).toBe(first?.[0]);
  // Without a stamp nothing is known again.
  const unstamped = standingOf(piece, testShop([...readings]), now, memo).drying;
  expect(unstamped[0]).not.toBe(first?.[0]);
  expect(unstamped).toEqual(first);
});
