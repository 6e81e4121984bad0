import { expect, test } from "vitest";
import { standingOf } from "./buildStanding.ts";
import { hourMs, monday, steadyAir, testLog, testShop } from "./testLog.ts";

const readings = steadyAir({ from: monday, hours: 150, everyH: 3 });

function nineCoats() {
  const log = testLog({ recipeId: "start-general", alloyId: "c87300", headM: 0.3, geometry: "open" });
  for (let i = 0; i < 9; i++) log.coat(monday + (i * 14 + 1) * hourMs);
  return log.piece();
}

const now = monday + 150 * hourMs;

test("a covered coat is reckoned once as long as nothing it rests on changes", () => {
  const shop = testShop(readings);
  const piece = nineCoats();
  const [first, second] = [now, now + 60_000].map((at) => standingOf(piece, shop, at).drying);
  expect(first).toHaveLength(9);
  for (const [i, drying] of (first ?? []).slice(0, -1).entries()) expect(second?.[i]).toBe(drying);
  const reread = standingOf(piece, testShop([...readings]), now).drying;
  expect(reread[0]).not.toBe(first?.[0]);
  expect(reread).toEqual(first);
});
