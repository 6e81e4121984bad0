import * as fc from "fast-check";
import { expect, test } from "vitest";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import { marginOf } from "../../trade/volumeRoutes.ts";
import { unknownLoss } from "../../trade/metals/losses.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import type { Melt } from "../fire/fireStates.ts";
import { builtInShop } from "../piece/builtIns.ts";
import type { Piece } from "../piece/piece.ts";
import { loweredFrom, metalKnownOf, metalOf } from "../piece/pieceMetal.ts";
import { pourSupply } from "../pour/pourSupply.ts";
import { chargeFor, gatingKgOf, lossFor, lossTaken, marginFor } from "./chargeSum.ts";
import { massDraftOf } from "./massDraft.ts";
import { massByRoutes } from "./massRoutes.ts";
import { chargeKindOf, newItem, newMelt } from "./meltDraft.ts";
import { wantedCharge } from "./wantedCharge.ts";

const bronze = alloyOf("c87300")!;
const mesh: PatternMeasured = {
  patternId: "p",
  fileName: "gate finial.stl",
  sumsVersion: 1,
  triangles: 12,
  watertight: true,
  mmPerUnit: 1,
  volumeMm3: 160_000,
  areaMm2: 21_000,
  boxMm: [40, 50, 50],
  up: [0, 0, 1],
  headM: null,
  tips: 0,
  vents: 0,
  drains: 0,
  trappedMl: null,
  gatingMm3: 230_000,
  thinnestMm: 4,
  thickestMm: 40,
};
const pieceOf = (plan: Partial<Piece["plan"]>, patterns: readonly PatternMeasured[] = []) => ({
  plan: { name: "Gate finial", alloyId: "c87300", ...plan },
  patterns: patterns.map((one) => ({ ...one, id: "m", at: 0 })),
});
type Given = ReturnType<typeof pieceOf>;
const none = { kind: "nothing-weighed" } as const;

/** As the metal page has it with nothing typed. */
function metalPage(piece: Given, alloy = bronze) {
  const seen = piece.patterns.at(-1) ?? null;
  const draft = massDraftOf(piece.plan, seen);
  const metalKgM3 = alloy.solidKgM3.value;
  const routes = massByRoutes({ draft, mesh: seen, metalKgM3 });
  const used = routes.lines.find(({ route }) => route === routes.chosen?.used.route) ?? null;
  const castingKg = used?.mass?.likelyKg ?? metalOf(piece, alloy);
  const gatingKg = used === null ? 0 : gatingKgOf({ draft, mesh: seen, metalKgM3, waxKgM3: 930 });
  return castingKg === null
    ? null
    : chargeFor({
        draft,
        castingKg,
        gatingKg,
        margin: marginFor(draft, used?.route ?? null, metalKnownOf(piece, alloy)),
        lossShare: lossTaken(lossFor({ draft, alloyId: alloy.id, learned: none })),
      });
}
/** As the melt plan has it, with ingot in it. */
const meltPlan = (pieces: readonly Given[], alloy = bronze) =>
  wantedCharge({
    pieces,
    alloy,
    chargeKind: chargeKindOf({ ...newMelt, items: [newItem(1, alloy.id, "")] }),
    lossShare: null,
    melts: [],
    shop: builtInShop,
  });

test("a piece begun from a mesh with a tree: metal page and melt plan weigh in the tree, at a measured volume's margin", () => {
  const piece = pieceOf({ metalLitre: 0.39 }, [mesh]);
  // 0.39 l at 8360 kg/m³ is 3.2604 kg; 5 % on it is less than 0.2 kg, so 0.2; 1.5 % burns off: 3.5131 kg by hand.
  expect(metalPage(piece)?.chargeKg).toBeCloseTo(3.5131, 3);
  expect(meltPlan([piece])?.parts.chargeKg).toBeCloseTo(3.5131, 3);
});

test("six kilograms that nobody measured are 7.31 kg on both, a guess's margin", () => {
  const piece = pieceOf({ metalKg: 6 });
  // 6·1.2/0.985.
  expect(metalPage(piece)?.chargeKg).toBeCloseTo(7.3096, 3);
  expect(meltPlan([piece])?.parts.chargeKg).toBeCloseTo(7.3096, 3);
  expect(meltPlan([pieceOf({ metalKg: 6, metalKnown: "weighed" })])?.parts.chargeKg).toBeCloseTo(6.7005, 3);
});

test("what is melted for the pieces is what the pour finds: casting, gating and margin", () => {
  const given = givenPiece({ alloyId: "c87300", metalKg: 6 });
  const { parts, lossShare } = meltPlan([pieceOf({ metalKg: 6 })])!;
  const melt = {
    id: "m",
    plan: {
      alloyId: "c87300",
      items: [{ name: "ingot", massKg: parts.chargeKg, alloyId: "c87300" }],
      furnaceId: null,
      pourC: 1100,
      chargeKind: "clean-ingot",
      lossShare,
    },
    startedAt: null,
    ended: null,
  } as unknown as Melt;
  const supply = pourSupply({
    standings: [given.standing(1)],
    melt,
    shop: builtInShop,
    told: { metalKg: null, thinnestMm: [] },
  });
  expect(supply.wantedKg).toBe(6);
  expect(supply.metalKg).toBeCloseTo(parts.meltKg, 9);
  expect(parts.meltKg).toBeCloseTo(7.2, 9);
});

test("one sum for any plan: metal page, melt plan and pour agree, and a charge of many is the sum of theirs", () => {
  const plan = fc.record(
    {
      metalKg: fc.double({ min: 0.05, max: 300, noNaN: true }),
      metalLitre: fc.double({ min: 0.05, max: 300, noNaN: true }),
      metalKnown: fc.constantFrom("measured" as const, "weighed" as const, "guessed" as const),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(plan, fc.constantFrom(...alloys), (of, alloy) => {
      const piece = pieceOf({ ...of, alloyId: alloy.id });
      const page = metalPage(piece, alloy);
      const melt = meltPlan([piece], alloy);
      expect(melt?.parts.chargeKg ?? null).toEqual(page?.chargeKg ?? null);
      expect(melt?.parts.marginKg ?? null).toEqual(page?.marginKg ?? null);
      if (melt === null) return;
      expect(melt.parts.meltKg).toBeCloseTo(melt.parts.chargeKg * (1 - melt.lossShare), 6);
      const both = meltPlan([piece, piece], alloy)!;
      const share = marginOf[metalKnownOf(piece, alloy)].value;
      expect(both.parts.castingKg).toBeCloseTo(2 * melt.parts.castingKg, 6);
      expect(both.parts.marginKg).toBeCloseTo(Math.max(0.2, 2 * share * melt.parts.castingKg), 6);
    }),
  );
});

test("learned loss is of clean ingot; returns and turnings keep theirs, and lose no less than ingot", () => {
  const learned = { kind: "learned", lossShare: 0.02, melts: 4, inKg: 20 } as const;
  const loss = (
    chargeKind: "clean-ingot" | "mixed-returns" | "turnings",
    lossShare: number | null = null,
    of: number = learned.lossShare,
  ) =>
    lossFor({ draft: { chargeKind, lossShare }, alloyId: "c87300", learned: { ...learned, lossShare: of } });
  expect(loss("clean-ingot")).toMatchObject({ lossShare: 0.02, basis: "learned" });
  // Middles of 2–4 % and of 5–10 %, common practice.
  expect(loss("mixed-returns")).toMatchObject({ lossShare: 0.03, basis: "starting" });
  expect(loss("turnings")?.lossShare).toBeCloseTo(0.075, 9);
  expect(loss("turnings", 0.12)).toMatchObject({ lossShare: 0.12, basis: "typed" });
  expect(loss("mixed-returns", null, 0.06)).toMatchObject({ lossShare: 0.06, basis: "learned" });
  expect(lossTaken(null)).toBe(unknownLoss.value);
});

test("scrap among the items is charged as returns until someone says otherwise", () => {
  const scrap = { ...newItem(2, null, "old fittings"), kind: "unknown-copper" as const };
  const items = [newItem(1, "c87300", ""), scrap];
  expect(chargeKindOf({ ...newMelt, items })).toBe("mixed-returns");
  expect(chargeKindOf({ ...newMelt, items, chargeKind: "turnings" })).toBe("turnings");
  expect(chargeKindOf({ ...newMelt, items: [] })).toBe("clean-ingot");
});

test("a save that lowers the plan is one in any unit: 0.39 l of this bronze is 3.26 kg", () => {
  const litres = pieceOf({ metalLitre: 0.39 });
  expect(loweredFrom(litres, bronze, 1.31)).toBeCloseTo(3.2604, 4);
  expect(loweredFrom(litres, bronze, 3.26)).toBeNull();
  expect(loweredFrom(litres, bronze, 3.25)).toBeCloseTo(3.2604, 4);
  expect(loweredFrom(pieceOf({ metalKg: 1.31, metalLitre: 0.39 }), bronze, 2)).toBeCloseTo(3.2604, 4);
  expect(loweredFrom(pieceOf({}), bronze, 0.1)).toBeNull();
});

test("how well metal is known goes with its figure, and a plan as its mesh has it is measured", () => {
  expect(metalKnownOf(pieceOf({ metalLitre: 0.39 }, [mesh]), bronze)).toBe("measured");
  expect(metalKnownOf(pieceOf({ metalLitre: 0.16 }, [mesh]), bronze)).toBe("guessed");
  expect(metalKnownOf(pieceOf({ metalLitre: 0.39 }), bronze)).toBe("guessed");
  const piece = givenPiece({ metalKg: 2 });
  piece.log(1, "piece-changed", { changes: { metalKg: 3, metalKnown: "weighed" } });
  piece.log(2, "piece-changed", { changes: { headM: 0.3, metalLitre: null } });
  expect(piece.standing(2).piece.plan.metalKnown).toBe("weighed");
  piece.log(3, "piece-changed", { changes: { metalKg: 4 } });
  expect(piece.standing(3).piece.plan.metalKnown).toBeUndefined();
});
