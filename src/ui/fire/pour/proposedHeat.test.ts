import * as fc from "fast-check";
import { expect, test } from "vitest";
import { givenCoated } from "../../../../tests/givenPiece.ts";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { pourShell, type PourShell } from "../../../logbook/pour/pourShells.ts";
import { heatWhy } from "../../../logbook/pour/pourSheetWhys.ts";
import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { pouredColdShell } from "../../../rules/pouredColdShell.ts";
import { alloys } from "../../../trade/metals/alloys.ts";
import type { RackItem } from "../../base/state/live.ts";
import { hottestLeave, leaveOf, plannedShells } from "../../../logbook/pour/leaveHeat.ts";
import { newPour, pourDay } from "./pourDraft.ts";
import { pourParts } from "./pourParts.ts";

const coated = givenCoated();
coated.log(100, "shell-preheated", { shellC: 600 });
const base = coated.standing(101);
const pattern = {
  id: "pattern",
  at: 0,
  patternId: "mesh",
  fileName: "gate finial.stl",
  sumsVersion: 1,
  triangles: 10,
  watertight: true,
  mmPerUnit: 1,
  volumeMm3: 1e5,
  areaMm2: 3e4,
  boxMm: [100, 60, 30],
  up: [1, 0, 0],
  headM: 0.2,
  tips: 0,
  vents: 1,
  drains: 0,
  trappedMl: 0,
  gatingMm3: 0,
  thickestMm: 40,
} as const;

/** A preheated shell of a metal and a thinnest section, at a heat. */
function preheated(alloyId: string, thinnestMm: number, shellC: number): Standing {
  const { piece } = base;
  const preheats = piece.preheats.map((one) => ({ ...one, shellC }));
  const patterns = [{ ...pattern, thinnestMm }];
  return { ...base, piece: { ...piece, preheats, patterns, plan: { ...piece.plan, alloyId } } };
}

const itemOf = (standing: Standing): RackItem => ({ standing, findings: [], worst: null });
const partsOf = (standing: Standing) =>
  pourParts({
    items: [itemOf(standing)],
    run: null,
    melt: null,
    melts: [],
    shop: builtInShop,
    told: { metalKg: 6, thinnestMm: [] },
  });

/** What the pour sheet has against a shell just read at its planned heat, soaked. */
function sheetWhy(standing: Standing, alloyId: string, shellC: number): readonly string[] {
  const alloy = ownAlloy(alloyId, builtInShop);
  const shell = pourShell(standing, { toldMm: null, metalKg: null, alloy });
  const planned = { shellC, pourAt: 0 } as Pour["plan"];
  const heat = { begunAt: 0, last: { id: "r", at: 0, c: shellC }, soakedMin: null };
  return heatWhy(heat, { planned, shell, alloy, now: 60_000 }).why.map(({ code }) => code);
}

const cases = alloys
  .flatMap(({ id }) => Array.from({ length: 40 }, (_, i): [string, number] => [id, i + 1]))
  .concat([
    ["a356", 8],
    ["c90300", 4],
    ["c90300", 2.5],
    ["a356", 8.01],
  ]);

test("the preheat a kiln plan proposes is accepted by the pour sheet and by the findings", () => {
  for (const [alloyId, thinnestMm] of cases) {
    const shellC = leaveOf(preheated(alloyId, thinnestMm, 600), { shop: builtInShop, planned: undefined });
    const standing = preheated(alloyId, thinnestMm, shellC);
    expect([alloyId, thinnestMm, shellC, pouredColdShell(standing)]).toEqual([
      alloyId,
      thinnestMm,
      shellC,
      [],
    ]);
    expect([alloyId, thinnestMm, sheetWhy(standing, alloyId, shellC)]).toEqual([alloyId, thinnestMm, []]);
  }
});

test("several shells: the kiln plan asks for the heat the pour's plan starts with", () => {
  const sections = [
    [15, 3],
    [3, 15],
    [null, 15],
    [15, null],
    [4, 8, 40],
  ];
  for (const alloyId of ["c87300", "a356", "c90300"])
    for (const some of sections) {
      const standings = some.map((mm, i) => {
        const standing = preheated(alloyId, mm ?? 0, 600);
        return { ...standing, piece: { ...standing.piece, id: `s${i}` } };
      });
      const parts = pourParts({
        items: standings.map(itemOf),
        run: null,
        melt: null,
        melts: [],
        shop: builtInShop,
        told: { metalKg: 6, thinnestMm: [] },
      });
      const ids = standings.map(({ piece }) => piece.id);
      const { shellC } = pourDay({ ...newPour(ids), metalKg: 6 }, parts, 0);
      const asked = standings.map((one) => leaveOf(one, { shop: builtInShop, planned: undefined }));
      expect([alloyId, some, hottestLeave(asked)]).toEqual([alloyId, some, shellC]);
    }
});

test("what a planned pour says of its shell stands before what a plan starts with", () => {
  const standing = preheated("c87300", 3, 600);
  const planned = plannedShells([
    { pieceIds: ["other", standing.piece.id], plan: { shellC: 615, pourAt: 0 } as Pour["plan"] },
  ]);
  expect(planned.get(standing.piece.id)).toEqual({ thinnestMm: null, shellC: 615 });
  expect(leaveOf(standing, { shop: builtInShop, planned: planned.get(standing.piece.id) })).toBe(615);
  expect(hottestLeave([])).toBe(500);
});

test("one degree below the low end is what the sheet blocks", () => {
  const why = (shellC: number) => sheetWhy(preheated("c90300", 4, shellC), "c90300", shellC);
  expect([why(650), why(649)]).toEqual([[], ["heat-too-low"]]);
});

test("a pour plan's own starting values pass its own check", () => {
  const some = [3, 4, 5, 8, 8.01, 15, 40];
  for (const [alloyId, thinnestMm] of alloys.flatMap(({ id }) =>
    some.map((mm): [string, number] => [id, mm]),
  )) {
    const standing = preheated(alloyId, thinnestMm, 600);
    const parts = partsOf(standing);
    expect(parts.shells.map(({ wallMm }) => wallMm)).toEqual([
      pourShell(standing, { toldMm: null, metalKg: null, alloy: null }).wallMm,
    ]);
    const day = pourDay({ ...newPour([standing.piece.id]), metalKg: 6 }, parts, 0);
    expect([alloyId, thinnestMm, day.fixes]).toEqual([alloyId, thinnestMm, []]);
    const problems = day.order?.turns.flatMap((turn) => turn.problems) ?? [];
    expect([alloyId, thinnestMm, problems]).toEqual([alloyId, thinnestMm, []]);
  }
});

/** What a plan with nothing typed comes to, for shells of any kind. */
function freshPlan(of: {
  readonly alloyId: string;
  readonly shells: readonly (Pick<PourShell, "wallMm" | "thinnestMm"> & { readonly metalKg: number })[];
  readonly spareShare: number | null;
  readonly airC: number;
}) {
  const alloy = ownAlloy(of.alloyId, builtInShop)!;
  const shells = of.shells.map((shell, i): PourShell => ({
    id: `s${i}`,
    name: `Shell ${i + 1}`,
    isWallKnown: true,
    thinnestFrom: shell.thinnestMm === null ? null : "mesh",
    modulusMm: null,
    modulusFrom: null,
    ...shell,
  }));
  const wantedKg = shells.reduce((sum, { metalKg }) => sum + (metalKg ?? 0), 0);
  const parts = {
    ...partsOf(preheated(of.alloyId, 5, 600)),
    shells,
    wantedKg,
    metalKg: of.spareShare === null ? null : wantedKg * (1 + of.spareShare),
    airC: of.airC,
  };
  const day = pourDay(newPour(shells.map(({ id }) => id)), parts, 0);
  return { alloy, parts, day };
}

const anyShell = fc.record({
  wallMm: fc.double({ min: 2, max: 30, noNaN: true }),
  thinnestMm: fc.oneof(fc.constant(null), fc.double({ min: 1, max: 60, noNaN: true })),
  metalKg: fc.double({ min: 0.05, max: 60, noNaN: true }),
});
const anyPlan = fc.record({
  alloyId: fc.constantFrom(...alloys.map(({ id }) => id)),
  shells: fc.array(anyShell, { minLength: 1, maxLength: 4 }),
  spareShare: fc.constantFrom(null, 0, 0.05, 0.2),
  airC: fc.double({ min: -10, max: 40, noNaN: true }),
});

test("a fresh plan of any shells and metal passes its own checks, or says that no value can", () => {
  let passed = 0;
  fc.assert(
    fc.property(anyPlan, (of) => {
      const { day } = freshPlan(of);
      if (day.fixes.length === 0) {
        passed += 1;
        expect(day.order?.isEnough ?? true).toBe(true);
      }
      for (const fix of day.fixes) {
        if (fix.is === "shell-cold") expect(fix).toMatchObject({ leaveC: null });
        else expect(fix).toMatchObject({ is: "metal-cold", raiseToC: null });
      }
    }),
    { numRuns: 150 },
  );
  expect(passed).toBeGreaterThan(75);
});
