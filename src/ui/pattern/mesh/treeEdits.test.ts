import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bare,
  drawn,
  found,
  gate,
  hangs,
  mark,
  placed,
  sides,
  vents,
} from "../../../../tests/meshes/testTree.ts";
import type { GatingBar } from "../../../geometry/gatingBars.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import type { MarkKind } from "../../../logbook/casting/mark.ts";
import { sizeOf } from "./patternSize.ts";
import {
  mmPerUnitOf,
  movedMark,
  placedOf,
  resized,
  restored,
  treeMisfit,
  turned,
  withCup,
  withMark,
  withoutMark,
  withTree,
  type PatternStudy,
} from "./patternStudy.ts";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";

const headOf = (study: PatternStudy): number | null | undefined => measuredOf(study)?.headM;

/** Every place that can be marked, in shares of the block. */
const spots: readonly Vec3[] = [
  [0.25, 0.25, 1],
  [0.75, 0.5, 1],
  [0.5, 0.75, 1],
  [1, 0.5, 0.1],
  [0, 0.5, 0.3],
  [0.5, 0, 0.6],
];
const ups: readonly Vec3[] = [
  [0, 0, 1],
  [0, 0, -1],
  [1, 0, 0],
  [0, Math.SQRT1_2, Math.SQRT1_2],
];
const edit = fc.oneof(
  fc.record({ do: fc.constant("turn" as const), up: fc.constantFrom(...ups) }),
  fc.record({ do: fc.constant("scale" as const), percent: fc.constantFrom(100, 50, 130) }),
  fc.record({
    do: fc.constant("put" as const),
    kind: fc.constantFrom<MarkKind>("gate", "vent", "vent", "vent", "feeder", "drain"),
    at: fc.nat(spots.length - 1),
  }),
  fc.record({ do: fc.constant("move" as const), which: fc.nat(9), at: fc.nat(spots.length - 1) }),
  fc.record({ do: fc.constant("remove" as const), which: fc.nat(9) }),
  fc.record({ do: fc.constant("cup" as const), cupMm: fc.constantFrom(40, 100, 180) }),
  fc.record({ do: fc.constant("draw" as const) }),
  fc.record({ do: fc.constant("draw" as const) }),
  fc.record({ do: fc.constant("undo" as const) }),
);
type Edit = typeof edit extends fc.Arbitrary<infer E> ? E : never;

function edited(study: PatternStudy, one: Edit, newId: () => string): PatternStudy {
  const by = mmPerUnitOf(study) ?? 1;
  const point = (at: number): Vec3 => {
    const share = spots[at]!;
    return [share[0] * sides[0] * by, share[1] * sides[1] * by, share[2] * sides[2] * by];
  };
  const chosen = (which: number): string => study.marks[which % study.marks.length]?.id ?? "";
  switch (one.do) {
    case "turn":
      return turned(study, one.up);
    case "scale":
      return resized(study, { scale: { kind: "percent", percent: one.percent } });
    case "put":
      return withMark(study, mark(newId(), one.kind, point(one.at)));
    case "move":
      return movedMark(study, chosen(one.which), { point: point(one.at), normal: null });
    case "remove":
      return withoutMark(study, chosen(one.which));
    case "cup":
      return withCup(study, one.cupMm);
    case "draw":
      return withTree(study, hangs(study), newId);
    case "undo":
      return study;
  }
}

const sketch = (bars: readonly GatingBar[]): readonly string[] =>
  bars
    .map(({ kind, from, to, fromSection, toSection }) =>
      JSON.stringify([kind, from.map(tidy), to.map(tidy), fromSection, toSection]),
    )
    .sort();
const tidy = (value: number): number => Math.round(value * 1e4) / 1e4 + 0;

test("edits in any order leave a tree like one drawn from nothing, or one that is said not to fit", () => {
  const seen = { fits: 0, not: 0 };
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 14 }), (edits) => {
      let n = 0;
      const newId = (): string => `m${n++}`;
      let study = drawn(placed(gate, ...vents));
      const past = [study];
      for (const one of edits) {
        if (one.do === "undo" && past.length > 1) study = restored(study, placedOf(past.pop()!));
        else {
          past.push(study);
          study = edited(study, one, newId);
        }
        study = found(study);
        const by = mmPerUnitOf(study)!;
        if (study.bars.length === 0) continue;
        const size = sizeOf(study, by);
        if (treeMisfit(study) !== null) {
          seen.not++;
          expect(size).toMatchObject({ tree: null, gatingMm3: 0, gatingAreaMm2: 0 });
          expect(planOfStudy(study, null)).toEqual({ patternId: bare.id, alloyId: "c87300" });
          continue;
        }
        seen.fits++;
        const { marks, up, unit, scale, cupMm } = study;
        const anew = drawn({ ...bare, marks, up, unit, scale, cupMm });
        expect(sketch(study.bars)).toEqual(sketch(anew.bars));
        expect(size.gatingMm3 / sizeOf(anew, by).gatingMm3).toBeCloseTo(1, 9);
        expect(size.gatingAreaMm2 / sizeOf(anew, by).gatingAreaMm2).toBeCloseTo(1, 9);
        expect(headOf(study)).toBeCloseTo(headOf(anew)!, 9);
      }
    }),
    { numRuns: 300 },
  );
  // Neither answer is the easy way out.
  expect(seen.fits).toBeGreaterThan(300);
  expect(seen.not).toBeGreaterThan(300);
});
