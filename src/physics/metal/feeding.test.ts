import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import { coolingOf } from "../heat/coolingSolid.ts";
import { feedChain, type ChainLink } from "./feedChain.ts";
import { riserDiameterMm, riserModulusCheck, riserVolumeCheck } from "./feeding.ts";
import { modulusMm } from "./freezing.ts";
import { modulusForTimeMm } from "../../../tests/sums/modulusForTime.ts";

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);
const plate = ([thicknessMm = 0, widthMm = 0, lengthMm = 0]: readonly number[]) =>
  ({ kind: "plate", thicknessMm, widthMm, lengthMm }) as const;

describe("risers", () => {
  test.each(truth.riserByTime)("$source", (row) => {
    const casting = modulusMm(plate(row.plateMm));
    const constantSMm2 = row.castingS / casting ** 2;
    expect(off(constantSMm2, row.constantSMm2)).toBeLessThan(row.within);
    const modulus = modulusForTimeMm({ constantSMm2, timeS: row.riserS });
    expect(off(riserDiameterMm({ modulusMm: modulus, slender: row.slender }), row.diameterMm)).toBeLessThan(
      row.within,
    );
  });

  test("a plate of 25 × 25 × 5 cm asks a riser of 128.6 mm by modulus, and Caine's curve has 128.5", () => {
    const { plateMm, modulusDiameterMm, caineDiameterMm: caineMm, within } = truth.riserSizing;
    const casting = coolingOf(plate(plateMm));
    const modulus = casting.volumeMm3 / casting.areaMm2;
    expect(off(modulus, truth.riserSizing.modulusMm)).toBeLessThan(within);
    const found = riserDiameterMm({ modulusMm: 1.2 * modulus, slender: 1 });
    expect(off(found, modulusDiameterMm)).toBeLessThan(within);
    expect(off(found, caineMm)).toBeLessThan(0.01);
  });

  test("a riser found for a modulus has it", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.boolean(),
        (wanted, slender, topCools) => {
          const diameterMm = riserDiameterMm({ modulusMm: wanted, slender, topCools });
          const riser = { kind: "riser", diameterMm, heightMm: slender * diameterMm, topCools } as const;
          expect(off(modulusMm({ ...riser, baseCools: true }), wanted)).toBeLessThan(1e-9);
        },
      ),
    ));

  test("a riser of 1.2 is enough, one of 1.19 isn't", () => {
    expect(riserModulusCheck({ castingModulusMm: 5, riserModulusMm: 6 }).isMet).toBe(true);
    expect(riserModulusCheck({ castingModulusMm: 5, riserModulusMm: 5.95 })).toEqual({
      hasMm: 5.95,
      needsMm: 6,
      isMet: false,
    });
  });

  test.each(truth.riserVolume.rows)("shrinking $shrinkShare and giving $giveShare asks $ratio", (row) => {
    const has = (riserVolumeMm3: number) =>
      riserVolumeCheck({ ...row, castingVolumeMm3: 1e5, riserVolumeMm3 });
    expect(has(1e5 * row.ratio * 1.001).isMet).toBe(true);
    expect(has(1e5 * row.ratio * 0.999).isMet).toBe(false);
  });

  test("a riser that gives less than it shrinks is never enough; iron that swells asks none", () => {
    const sizes = { castingVolumeMm3: 1e5, riserVolumeMm3: 1e9 };
    expect(riserVolumeCheck({ ...sizes, shrinkShare: 0.05, giveShare: 0.04 }).kind).toBe("never-enough");
    expect(riserVolumeCheck({ ...sizes, shrinkShare: -0.025, giveShare: 0.14 })).toMatchObject({
      needsMm3: 0,
    });
  });
});

describe("a chain from casting to cup", () => {
  const law = { constantSMm2: 4 };
  const rod = (name: string, role: ChainLink["role"], diameterMm: number): ChainLink => ({
    name,
    role,
    solid: { kind: "cylinder", diameterMm },
  });
  const wall: ChainLink = { name: "wall", role: "casting", solid: { kind: "plate", thicknessMm: 5 } };

  test("one whose moduli grow by a tenth feeds all the way", () => {
    const chain = feedChain({ links: [wall, rod("gate", "gate", 12), rod("sprue", "sprue", 16)], law });
    expect(chain).toMatchObject({ isMet: true, shutAt: null });
    expect(chain.links.map(({ verdict }) => verdict)).toEqual(["first", "feeds", "feeds"]);
  });

  test("a thin gate shuts it, and by how much is told", () => {
    const chain = feedChain({ links: [wall, rod("gate", "gate", 8), rod("sprue", "sprue", 16)], law });
    expect(chain.isMet).toBe(false);
    expect(chain.shutAt).toMatchObject({ name: "gate", verdict: "early", volumeMm3: null });
    // Moduli 2.5 and 2: 25 s against 16 s.
    expect(chain.shutAt?.earlyS).toBeCloseTo(9, 9);
    expect(chain.shutAt?.needsMm).toBeCloseTo(2.75, 9);
    expect(chain.shutAt?.reach).toBeCloseTo(2 / 2.75, 9);
    expect(chain.links[2]?.verdict).toBe("feeds");
  });

  test("a link between even and a tenth more is tight, and freezes late enough", () => {
    const chain = feedChain({ links: [wall, rod("gate", "gate", 10.4)], law });
    expect(chain.links[1]).toMatchObject({ verdict: "tight", earlyS: 0 });
    expect(chain).toMatchObject({ isMet: false, shutAt: null });
  });

  test("a sprue thicker than its gate but thinner than the casting still freezes early", () => {
    const block: ChainLink = { name: "base", role: "casting", solid: { kind: "cube", sideMm: 60 } };
    const chain = feedChain({ links: [block, rod("gate", "gate", 12), rod("sprue", "sprue", 20)], law });
    expect(chain.links.map(({ verdict }) => verdict)).toEqual(["first", "early", "early"]);
  });

  test("scaling a whole chain changes no verdict, and only its times", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 2, max: 60, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        (diameters, scale) => {
          const at = (by: number) =>
            feedChain({ links: diameters.map((d, i) => rod(`${i}`, "runner", d * by)), law });
          const [once, scaled] = [at(1), at(scale)];
          expect(scaled.links.map(({ verdict }) => verdict)).toEqual(
            once.links.map(({ verdict }) => verdict),
          );
          for (const [i, link] of once.links.entries())
            expect(off(scaled.links[i]?.freezeS ?? NaN, link.freezeS * scale ** 2)).toBeLessThan(1e-9);
        },
      ),
    ));

  test("no chain at all is refused", () => {
    expect(() => feedChain({ links: [], law })).toThrow(/at least one/);
  });
});
