import { expect, test } from "vitest";
import { aheadNow as now, demoAhead } from "../../../../tests/demoAhead.ts";
import { millisecondsInDay as dayMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { shellHeatOf } from "../../../logbook/fire/shellHeat.ts";
import { makeMemo } from "../../../logbook/log/memo.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { lookAhead, type NextPour } from "./lookAhead.ts";

const demo = demoAhead({ "demo-heron": { metalLitre: 0.22 }, "demo-carp": { metalLitre: 0.49 } });
const { around } = demo.ahead;
const carp = demo.standing("demo-carp").piece;

async function looked(
  pieces: readonly Piece[],
  { pours = [], pourId = null }: { pours?: readonly Pour[]; pourId?: string | null } = {},
): Promise<NextPour> {
  const rack = { ...around, pieces };
  const asked = { rack, shop: around.shop, melts: [], pours, pourId, hours: null, now, memo: makeMemo() };
  const answer = await lookAhead({ ...asked, pourAt: now + 9 * dayMs }, () => Promise.resolve(true));
  if (answer === null) throw new Error("the look was not broken off");
  return answer;
}

test("a piece whose page says: no further coat, gets no time for one", async () => {
  const free = await looked([carp]);
  expect(free.times[0]?.of.coats.length).toBeGreaterThan(0);
  const last = carp.coats.at(-1)!;
  const dippedAt = now - 20 * minuteMs;
  const wet = [
    ...carp.coats.slice(0, -1),
    { ...last, dippedAt: dippedAt - 20 * minuteMs, redips: [] },
    { ...last, id: "too-soon", number: last.number + 1, step: (last.step ?? 0) + 1, dippedAt, redips: [] },
  ];
  const held = await looked([{ ...carp, coats: wet }]);
  expect(held.times).toEqual([]);
  expect(held.proposal.left.map(({ why }) => why)).toEqual([{ code: "stopped", stop: { code: "held" } }]);
});

/** A pour as its page plans it, with a section and a heat of its own. */
const pourOf = (id: string, thinnestMm: number, shellC: number): Pour => ({
  id,
  pieceIds: ["demo-plaque", carp.id],
  plan: {
    id,
    at: now,
    pourAt: now + 9 * dayMs,
    pieceIds: ["demo-plaque", carp.id],
    bed: "air",
    shellC,
    metalC: 1150,
    steps: [],
    told: { family: "fused-silica", people: 2, carryMin: 1.5, metalKg: null, thinnestMm: [null, thinnestMm] },
  },
  steps: [],
  marks: [],
  checks: [],
  decided: null,
  ended: null,
  lastAt: now,
});

test("section and heat of the planned pour it is in reach the proposal; of two the one asked about", async () => {
  const [free] = (await looked([carp])).proposal.kilns;
  const own = pourOf("own", 20, 660);
  const other = pourOf("other", 2, 640);
  const [planned] = (await looked([carp], { pours: [own], pourId: "own" })).proposal.kilns;
  const { alloy } = planned!.pieces[0]!.of;
  expect(planned).toMatchObject({ leaveC: 660, pieces: [{ of: { leaveC: 660 } }] });
  expect(planned?.heat).toMatchObject(rangeOf(shellHeatOf(alloy!, 20)!));
  expect(rangeOf(shellHeatOf(alloy!, 20)!)).not.toEqual(rangeOf(free!.heat!));
  const both = await looked([carp], { pours: [own, other], pourId: "own" });
  expect(both.proposal.kilns[0]?.leaveC ?? both.proposal.left[0]?.of.leaveC).toBe(660);
});

const rangeOf = ({ lowC, highC }: { lowC: number; highC: number }) => ({ lowC, highC });
