import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chargeOf } from "../casting/chargeSum.ts";
import {
  exactUpTo,
  inKiln,
  litresOf,
  meltOf,
  packPour,
  sharedHeat,
  type PackKiln,
  type Packing,
  type PackPiece,
  type PackShop,
} from "./packPour.ts";

/** By the one charge sum, each casting weighed: a tenth of margin, and never under 0.2 kg (common practice, no source). */
const meltKg: PackShop["meltKg"] = (pieces) =>
  chargeOf({
    castings: pieces.map(({ metalKg, known }) => ({ castingKg: metalKg, gatingKg: 0, by: known })),
    heelKg: 0,
    lossShare: 0.03,
  })?.meltKg ?? 0;
const piece = (id: string, metalKg: number, more: Partial<PackPiece> = {}): PackPiece => ({
  id,
  alloyId: "bronze",
  metalKg,
  known: "weighed",
  heat: { lowC: 700, highC: 850 },
  leaveC: 800,
  isPlanned: false,
  litre: null,
  ...more,
});
const crucible = (id: string, kg: number | null): PackShop["crucibles"][number] => ({ id, mostKg: () => kg });
const kiln = (id: string, more: Partial<PackKiln> = {}): PackKiln => ({
  id,
  maxC: 1200,
  usableL: null,
  ...more,
});
const shop = (more: Partial<PackShop> = {}): PackShop => ({
  crucibles: [crucible("c", 10)],
  kilns: [kiln("k")],
  meltKg,
  ...more,
});
const ids = ({ placed }: Packing): readonly string[] => placed.map(({ piece: { id } }) => id).toSorted();

describe("packing a pour day", () => {
  it("counts the margin: 9 kg and a tenth of it stay under 10 kg, 9.1 kg do not", () => {
    // 9.0 × 1.10 = 9.90; 9.1 × 1.10 = 10.01. The margin of a weighed mass: common practice, no source.
    expect(ids(packPour([piece("a", 4), piece("b", 5)], shop()))).toEqual(["a", "b"]);
    expect(ids(packPour([piece("a", 4.1), piece("b", 5)], shop()))).toEqual(["a"]);
  });

  it("never puts two alloys in one melt", () => {
    const both = [piece("a", 1), piece("b", 1, { alloyId: "aluminium" })];
    expect(ids(packPour(both, shop()))).toEqual(["a"]);
    const two = shop({ crucibles: [crucible("c", 10), crucible("d", 10)] });
    expect(ids(packPour(both, two))).toEqual(["a", "b"]);
  });

  it("leaves a shell whose heat does not meet the kiln's, until there is a second kiln", () => {
    const both = [piece("a", 1), piece("b", 1, { heat: { lowC: 860, highC: 950 }, leaveC: 900 })];
    expect(ids(packPour(both, shop()))).toEqual(["a"]);
    expect(ids(packPour(both, shop({ kilns: [kiln("k"), kiln("l")] })))).toEqual(["a", "b"]);
    expect(
      ids(packPour(both, shop({ kilns: [kiln("k", { maxC: 890 }), kiln("l", { maxC: 890 })] }))),
    ).toEqual(["a"]);
  });

  it("counts a size that is known, and none for one that is not", () => {
    const all = [piece("a", 1, { litre: 20 }), piece("b", 1, { litre: 11 }), piece("c", 1)];
    expect(ids(packPour(all, shop({ kilns: [kiln("k", { usableL: 30 })] })))).toEqual(["a", "c"]);
  });

  it("takes two that wait less before one that leaves no room for them, where greedy in order would not", () => {
    const all = [piece("first", 9), piece("b", 4.4), piece("c", 4.5)];
    expect(packPour(all, shop())).toMatchObject({ how: "exact" });
    expect(ids(packPour(all, shop()))).toEqual(["b", "c"]);
  });

  it("of as many takes the one that stands first", () => {
    expect(ids(packPour([piece("a", 6), piece("b", 5), piece("c", 1)], shop()))).toEqual(["a", "c"]);
  });

  it("is bound by nothing where nobody knows the crucible", () => {
    expect(ids(packPour([piece("a", 60)], shop({ crucibles: [crucible("c", null)] })))).toEqual(["a"]);
  });

  it("takes forty pieces greedily and in a blink", () => {
    const forty = Array.from({ length: 40 }, (_, i) =>
      piece(`p${String(i).padStart(2, "0")}`, 0.4 + (i % 7) * 0.3),
    );
    const started = performance.now();
    const packed = packPour(forty, shop({ crucibles: [crucible("c", 10), crucible("d", 6)] }));
    expect(packed.how).toBe("greedy");
    expect(packed.placed.length).toBeGreaterThan(10);
    expect(performance.now() - started).toBeLessThan(3000);
  });
});

const anyPiece = fc.record({
  alloyId: fc.constantFrom("bronze", "aluminium"),
  metalKg: fc.integer({ min: 2, max: 90 }).map((tenths) => tenths / 10),
  low: fc.constantFrom(600, 700, 800),
  litre: fc.option(fc.integer({ min: 1, max: 30 })),
  isPlanned: fc.constantFrom(false, false, false, true),
});
const piecesOf = (maxLength: number, minLength = 0) =>
  fc.array(anyPiece, { minLength, maxLength }).map((all) =>
    all.map(({ low, ...one }, i) =>
      piece(`p${String(i).padStart(2, "0")}`, one.metalKg, {
        ...one,
        heat: { lowC: low, highC: low + 120 },
        leaveC: low + 60,
      }),
    ),
  );
const anyKiln = fc.record({
  maxC: fc.constantFrom(750, 1200),
  usableL: fc.option(fc.integer({ min: 5, max: 60 })),
});
const anyShop = fc
  .record({
    crucibles: fc.array(fc.option(fc.integer({ min: 2, max: 20 })), { minLength: 1, maxLength: 2 }),
    kilns: fc.array(anyKiln, { minLength: 1, maxLength: 2 }),
  })
  .map(({ crucibles, kilns }) =>
    shop({
      crucibles: crucibles.map((kg, i) => crucible(`c${i}`, kg)),
      kilns: kilns.map((one, i) => kiln(`k${i}`, one)),
    }),
  );

/** Those planned first, then all: one that is planned already is worth more than any number of others. */
const worth = ({ placed }: Packing): number =>
  placed.length + 100 * placed.filter(({ piece: { isPlanned } }) => isPlanned).length;

/** Every way to place every piece, looked at in full: the most that can be taken, and the first set in order that has as many. */
function bruteForce(pieces: readonly PackPiece[], { crucibles, kilns }: PackShop): readonly string[] {
  let best: readonly PackPiece[] = [];
  const plannedOf = (some: readonly PackPiece[]): number => some.filter(({ isPlanned }) => isPlanned).length;
  const namesOf = (some: readonly PackPiece[]): string => some.map(({ id }) => id).join();
  const places = [null, ...crucibles.flatMap((one) => kilns.map((other) => [one, other] as const))];
  const total = places.length ** pieces.length;
  for (let choice = 0; choice < total; choice++) {
    const at = pieces.map((_, i) => places[Math.floor(choice / places.length ** i) % places.length] ?? null);
    const taken = pieces.filter((_, i) => at[i] !== null);
    const more = plannedOf(taken) - plannedOf(best) || taken.length - best.length;
    const beats = more > 0 || (more === 0 && namesOf(taken) < namesOf(best));
    if (!beats) continue;
    const fits =
      crucibles.every((one) => {
        const melt = pieces.filter((_, i) => at[i]?.[0] === one);
        const most = one.mostKg(melt[0]?.alloyId ?? "");
        const kg = melt.reduce((sum, { metalKg }) => sum + metalKg, 0);
        // Margin of a weighed mass: a tenth and never under 0.2 kg (common practice, no source).
        const held = kg + Math.max(0.1 * kg, 0.2);
        return (
          new Set(melt.map(({ alloyId }) => alloyId)).size <= 1 &&
          (melt.length === 0 || most === null || held <= most)
        );
      }) &&
      kilns.every((one) => {
        const inside = pieces.filter((_, i) => at[i]?.[1] === one);
        const lowC = Math.max(...inside.map(({ heat }) => heat?.lowC ?? -Infinity));
        const highC = Math.min(...inside.map(({ heat }) => heat?.highC ?? Infinity));
        const litre = inside.reduce((sum, piece_) => sum + (piece_.litre ?? 0), 0);
        return (
          inside.length === 0 ||
          (lowC <= highC &&
            inside.every(({ leaveC }) => leaveC <= one.maxC) &&
            litre <= (one.usableL ?? Infinity))
        );
      });
    if (fits) best = taken;
  }
  return best.map(({ id }) => id);
}

describe("properties of a packing", () => {
  it("never goes over a crucible or a kiln, never mixes alloys, never takes a piece twice", () => {
    fc.assert(
      fc.property(piecesOf(20), anyShop, (pieces, around) => {
        const { placed } = packPour(pieces, around);
        expect(new Set(placed.map(({ piece: { id } }) => id)).size).toBe(placed.length);
        for (const { id, mostKg } of around.crucibles) {
          const melt = meltOf(placed, id);
          const [first] = melt;
          if (first === undefined) continue;
          expect(new Set(melt.map(({ alloyId }) => alloyId)).size).toBe(1);
          expect(meltKg(melt)).toBeLessThanOrEqual(mostKg(first.alloyId) ?? Infinity);
        }
        for (const { id, maxC, usableL } of around.kilns) {
          const inside = inKiln(placed, id);
          expect(sharedHeat(inside)).not.toBe("none");
          expect(litresOf(inside)).toBeLessThanOrEqual(usableL ?? Infinity);
          for (const { leaveC } of inside) expect(leaveC).toBeLessThanOrEqual(maxC);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("takes what trying every choice takes, up to six pieces with two crucibles and two kilns", () => {
    fc.assert(
      fc.property(piecesOf(6), anyShop, (pieces, around) => {
        const packed = packPour(pieces, around);
        expect(packed.how).toBe("exact");
        expect(ids(packed)).toEqual(bruteForce(pieces, around));
      }),
      { numRuns: 100 },
    );
  });

  it("takes what trying every choice takes, up to eight pieces with one crucible and one kiln", () => {
    const one = anyShop.map((around) => ({
      ...around,
      crucibles: around.crucibles.slice(0, 1),
      kilns: around.kilns.slice(0, 1),
    }));
    fc.assert(
      fc.property(piecesOf(8), one, (pieces, around) => {
        expect(ids(packPour(pieces, around))).toEqual(bruteForce(pieces, around));
      }),
      { numRuns: 200 },
    );
  });

  it.each([
    ["exact", 0, exactUpTo, 30],
    ["greedy", exactUpTo + 1, exactUpTo + 8, 60],
  ] as const)(
    "takes no fewer pieces with one more kiln or crucible, %s, wherever it stands",
    (how, least, most, numRuns) => {
      fc.assert(
        fc.property(
          piecesOf(most, least),
          anyShop,
          anyKiln,
          fc.boolean(),
          (pieces, around, more, isFirst) => {
            const before = packPour(pieces, around);
            expect(before.how).toBe(how);
            const added = kiln("new", more);
            const kilns = isFirst ? [added, ...around.kilns] : [...around.kilns, added];
            const withKiln = packPour(pieces, { ...around, kilns });
            expect(worth(withKiln)).toBeGreaterThanOrEqual(worth(before));
            const another = crucible("new", 5);
            const crucibles = isFirst ? [another, ...around.crucibles] : [...around.crucibles, another];
            const withCrucible = packPour(pieces, { ...around, crucibles });
            expect(worth(withCrucible)).toBeGreaterThanOrEqual(worth(before));
          },
        ),
        { numRuns },
      );
    },
  );
});
