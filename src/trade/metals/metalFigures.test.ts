import { describe, expect, test } from "vitest";
import { learnFurnace } from "../../physics/heat/furnace.ts";
import { meltEnergyJ } from "../../physics/metal/melt.ts";
import { judgeCharge } from "../../physics/metal/chargeVerdict.ts";
import { alloys, alloyOf } from "./alloys.ts";
import { compositionOf, contentsOf, metalContentsOf } from "./contents.ts";
import { furnaceEfficiency, fuels } from "../furnaces.ts";
import { dischargeCoefficients, fillFactorOfWall } from "../gatingFigures.ts";
import { feedingWalls, freezingGroup } from "./freezingGroup.ts";
import { leadFlag, limitsOfMetal, zincFlags } from "./metalAir.ts";
import { preheatOf } from "../preheat.ts";
import { recoveries, usualRecovery } from "../recovery.ts";
import { volumeRouteError } from "../volumeRoutes.ts";

describe("melting figures", () => {
  test.each(alloys)("ranges of $id run upwards", (row) => {
    expect(row.heavyLowC.value).toBeLessThan(row.heavyHighC.value);
    expect(row.shrinkLow.value).toBeLessThanOrEqual(row.shrinkHigh.value);
    expect(row.freezeLow.value).toBeLessThanOrEqual(row.freezeHigh.value);
    expect(row.solidHeatJKgK.value).toBeGreaterThan(row.roomHeatJKgK.value);
  });

  test.each(alloys)("heavy work in $id is poured cooler than thin work", (row) => {
    expect(row.heavyLowC.value).toBeLessThan(row.pourLowC.value);
    expect(row.crucibleKgM3.value).toBeLessThanOrEqual(row.liquidKgM3.value);
  });

  test("a kilogram of tin bronze takes about 0.19 kWh, of A356 0.32, of iron 0.33", () => {
    const kWh = (id: string, pourC: number): number => {
      const row = alloyOf(id);
      if (row === null) throw new Error(id);
      const heat = {
        liquidusC: row.liquidusC.value,
        solidJKgK: row.solidHeatJKgK.value,
        latentJKg: row.latentJKg.value,
        liquidJKgK: row.liquidHeatJKgK.value,
      };
      return meltEnergyJ({ ...heat, massKg: 1, fromC: 20, pourC }) / 3.6e6;
    };
    expect(kWh("c90300", 1150)).toBeCloseTo(0.19, 2);
    expect(kWh("a356", 740)).toBeCloseTo(0.32, 2);
    expect(kWh("iron", 1350)).toBeCloseTo(0.33, 2);
  });

  test("4 kg of bronze in half an hour fits a hot gas furnace of 15 kW and an electric one of 3", () => {
    const { hot } = learnFurnace([{ energyJ: 2.76e6, timeS: 1800, isHotStart: true }]);
    const [gas, electric] = [(hot?.medianW ?? 0) / 15_000, (hot?.medianW ?? 0) / 3000];
    expect(gas).toBeGreaterThan(furnaceEfficiency["gas-first-heat"].value.low);
    expect(gas).toBeLessThan(furnaceEfficiency["gas-hot"].value.high);
    expect(electric).toBeGreaterThan(furnaceEfficiency["electric-resistance"].value.low);
    expect(electric).toBeLessThan(furnaceEfficiency["electric-resistance"].value.high);
    expect(fuels.propane.value).toBe(46.4e6);
  });

  test("a wide freezing range is pasty and feeds a short way", () => {
    const group = (id: string) => {
      const alloy = alloyOf(id);
      return alloy && freezingGroup({ solidusC: alloy.solidusC.value, liquidusC: alloy.liquidusC.value });
    };
    expect(group("c95400")).toBe("skin");
    expect(group("a356")).toBe("between");
    expect(group("c90300")).toBe("pasty");
    expect(feedingWalls.pasty.value).toBeLessThan(feedingWalls.skin.value);
  });

  test("turnings lose more than returns, returns more than clean ingot", () => {
    for (const { loss } of alloys) {
      if (loss === null) continue;
      const [clean, mixed, fine] = [loss["clean-ingot"], loss["mixed-returns"], loss.turnings];
      expect(clean.value.low).toBeLessThan(mixed.value.low);
      expect(mixed.value.high).toBeLessThan(fine.value.high);
    }
    expect(alloyOf("c86500")?.loss?.["clean-ingot"].value).toEqual({
      low: 0.02,
      high: 0.04,
    });
    expect(alloyOf("tin")?.loss).toBeNull();
  });
});

describe("pouring figures", () => {
  test("a thinner wall wants a hotter shell, and no shell comes near the solidus", () => {
    for (const alloy of alloys) {
      const at = (wallMm: number) => preheatOf({ alloy, wallMm })?.value;
      for (const wallMm of [1, 3, 5, 10, 20]) {
        const [thin, thick] = [at(wallMm), at(wallMm * 2)];
        if (thin === undefined || thick === undefined) continue;
        expect(thin.highC).toBeGreaterThanOrEqual(thick.highC);
        expect(thin.highC).toBeLessThanOrEqual(alloy.solidusC.value - 50);
      }
    }
    const tin = alloyOf("tin");
    expect(tin === null ? NaN : preheatOf({ alloy: tin, wallMm: 3 })).toBeNull();
  });

  test("film-forming metals keep half a metre a second, tin bronze bears twice that", () => {
    const speed = (id: string) => alloys.filter((a) => a.id === id).map((a) => a.stream.gateSpeedMS.value)[0];
    for (const id of ["a356", "c95400", "c87300", "c86500"]) expect(speed(id)).toBe(0.5);
    expect(speed("c90300")).toBe(1);
    expect(fillFactorOfWall(5)?.value).toBe(1.85);
    expect(fillFactorOfWall(1)).toBeNull();
    expect(fillFactorOfWall(16)).toBeNull();
    expect(dischargeCoefficients.tapered.value.likely).toBe(0.88);
  });

  test("aluminium is broken out cooler than bronze, and never above its solidus", () => {
    for (const alloy of alloys) expect(alloy.knockout.value).toBeLessThan(alloy.solidusC.value / 2);
  });

  test("a mesh is trusted more than water, and water more than the scale", () => {
    expect(volumeRouteError.mesh.value).toBeLessThan(volumeRouteError.displacement.value);
    expect(volumeRouteError.displacement.value).toBeLessThan(volumeRouteError["pattern-weight"].value);
  });
});

describe("compositions", () => {
  test.each(alloys.flatMap(({ id, composition }) => (composition === null ? [] : [{ id, ...composition }])))(
    "$id, melted as bought and with nothing lost, never fails its own limits",
    (row) => {
      const contents = contentsOf(row.id);
      expect(contents).not.toBeNull();
      const judged = judgeCharge({
        items: [{ name: row.id, massKg: 10, contents: contents ?? {}, isBerylliumSuspect: false }],
        recovery: {},
        limits: row.limits,
      });
      if (!judged.ok) throw new Error(judged.code);
      expect(judged.limits.filter(({ verdict }) => verdict === "fail")).toEqual([]);
      for (const { limit, verdict } of judged.limits)
        if (limit.of.length === 1 && limit.of[0] !== "cu") expect(verdict).toBe("pass");
    },
  );

  test("tin bronze of 86 % copper with nickel may hold 85 % of copper alone", () => {
    const cu = contentsOf("c90300")?.cu;
    expect(cu?.low).toBeCloseTo(0.85, 12);
    expect(cu?.high).toBe(0.89);
  });

  test("present silicon bronze bears 0.09 % of lead", () => {
    const lead = compositionOf("c87300")?.limits.find(({ of }) => of[0] === "pb");
    expect(lead?.max).toBe(0.0009);
    expect(lead?.max).toBe(leadFlag.value);
  });

  test("two kilograms of red brass in eight of tin bronze is scrap for both", () => {
    const of = (id: string, massKg: number) => ({
      name: id,
      massKg,
      contents: contentsOf(id) ?? {},
      isBerylliumSuspect: false,
    });
    for (const id of ["c90300", "c92200"]) {
      const judged = judgeCharge({
        items: [of("c90300", 8), of("c83600", 2)],
        recovery: usualRecovery,
        limits: compositionOf(id)?.limits ?? [],
      });
      expect(judged).toMatchObject({ ok: true, verdict: "fail" });
    }
  });

  test("one shaving of aluminium bronze of 4.5 g is the limit in 10 kg of tin bronze", () => {
    const judged = (shavingKg: number) =>
      judgeCharge({
        items: [
          {
            name: "clean",
            massKg: 10,
            contents: {
              cu: { low: 0.88, high: 0.88 },
              sn: { low: 0.08, high: 0.08 },
              zn: { low: 0.04, high: 0.04 },
            },
            isBerylliumSuspect: false,
          },
          {
            name: "shaving",
            massKg: shavingKg,
            contents: { cu: { low: 0.89, high: 0.89 }, al: { low: 0.11, high: 0.11 } },
            isBerylliumSuspect: false,
          },
        ],
        recovery: {},
        limits: [{ of: ["al"], max: 0.000_05 }],
      });
    expect(judged(0.0045)).toMatchObject({ verdict: "pass" });
    expect(judged(0.0046)).toMatchObject({ verdict: "fail" });
  });

  test("alloys without a limit of their own have no contents", () => {
    expect(contentsOf("iron")).toBeNull();
    expect(compositionOf("tin")).toBeNull();
  });

  test("every recovery lies within its ends", () => {
    for (const { value } of Object.values(recoveries)) {
      expect(value.low).toBeLessThanOrEqual(value.likely);
      expect(value.likely).toBeLessThanOrEqual(value.high);
      expect(value.high).toBeLessThanOrEqual(1);
    }
  });
});

describe("hazards of the air", () => {
  test("leaded metals tell of lead, yellow brass of zinc and manganese, aluminium of neither", () => {
    const labels = (id: string) => limitsOfMetal(metalContentsOf(id) ?? {}).map(({ label }) => label);
    expect(labels("c83600")).toContain("Lead");
    expect(labels("c87300")).not.toContain("Lead");
    expect(labels("c86500")).toEqual(expect.arrayContaining(["Zinc oxide fume", "Manganese", "Copper fume"]));
    expect(labels("a356")).not.toContain("Lead");
    expect(labels("tin")).toEqual(["Tin, inorganic"]);
    expect(labels("iron")).toEqual(["Iron oxide fume"]);
    expect(zincFlags.watch.value).toBeLessThan(zincFlags.hold.value);
  });
});
