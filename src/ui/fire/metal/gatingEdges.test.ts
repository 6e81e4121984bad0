import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { alloys } from "../../../trade/metals/alloys.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { chainSum } from "../../../logbook/casting/chainSum.ts";
import { fillTimes } from "../../../logbook/casting/fillTimes.ts";
import {
  emptyLink,
  gatingDraftOf,
  gatingLimits,
  type GatingDraft,
} from "../../../logbook/casting/gatingDraft.ts";
import { heatSum } from "../../../logbook/casting/heatSum.ts";
import { metalHot, mostFillS, runSum } from "../../../logbook/casting/runSum.ts";

const start = gatingDraftOf({ metalKg: 4, headM: 0.2, mesh: null, shellMm: 8 });
const links = [
  { ...emptyLink(1, "wall", "casting", "plate"), thicknessMm: 8, widthMm: 60, lengthMm: 90 },
  { ...emptyLink(2, "feeder", "riser", "ball"), diameterMm: 60 },
] as const;

/** All that the page reckons from a draft, as it does. */
function pageOf(draft: GatingDraft, alloy: Alloy) {
  const figures = alloy;
  const middleC = (alloy.pourLowC.value + alloy.pourHighC.value) / 2;
  const hot = metalHot(draft, alloy, figures);
  const run = hot && runSum({ draft, hot, alloy, figures, fillS: null });
  const mostS =
    hot && mostFillS({ hot, alloy, figures, massKg: 4, wayMm: draft.runMm, widthMm: draft.runWidthMm });
  return {
    run,
    times: fillTimes({ massKg: 4, gate: draft.gate, alloy, wallMm: draft.wallMm, mostS }),
    chain: chainSum({
      draft,
      alloy,
      figures,
      metalC: hot?.metalC ?? middleC,
      shellC: hot?.shellC ?? 20,
    }),
    heat: heatSum({
      massKg: 4,
      heat: {
        liquidusC: alloy.liquidusC.value,
        solidJKgK: figures.solidHeatJKgK.value,
        latentJKg: figures.latentJKg.value,
        liquidJKgK: figures.liquidHeatJKgK.value,
      },
      pourC: middleC,
      furnace: null,
      power: null,
    }),
  };
}

const numbersIn = (value: unknown): readonly number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];
const within = ({ low, high }: { low: number; high: number }) =>
  fc.double({ min: low, max: high, noNaN: true });
const limit = (name: "wallMm" | "shellC" | "metalC" | "runMm" | "runWidthMm" | "shellMm") =>
  within(gatingLimits[name] ?? { low: 0, high: 1 });

describe("whatever the gating page takes, it can reckon", () => {
  test("a shell a kelvin below the liquidus lets metal run on, instead of breaking the page", () => {
    for (const alloy of alloys) {
      const shellC = alloy.liquidusC.value - 1;
      const { run } = pageOf({ ...start, links, wallMm: 300, runMm: 400, metalC: null, shellC }, alloy);
      expect(run?.has?.likelyS ?? null, alloy.id).toBeNull();
      expect(run?.advice?.verdict, alloy.id).toBe("runs");
    }
  });

  test("any alloy the shop may set, any figures the fields take: numbers, or nothing", () =>
    fc.assert(
      fc.property(
        fc.record({
          alloy: fc.constantFrom(...alloys),
          melts: fc.tuple(within(ranges.meltsC), within(ranges.meltsC)),
          pours: fc.tuple(within(ranges.metalC), within(ranges.metalC)),
          draft: fc.record({
            wallMm: limit("wallMm"),
            shellC: fc.option(limit("shellC")),
            metalC: fc.option(limit("metalC")),
            runMm: fc.option(limit("runMm")),
            runWidthMm: fc.option(limit("runWidthMm")),
            shellMm: fc.option(limit("shellMm")),
            bed: fc.constantFrom("air" as const, "cold-sand" as const, "thick-mould" as const),
          }),
        }),
        ({ alloy, melts, pours, draft }) => {
          const figure = (value: number) => ({ value, basis: "own" as const, source: "own" });
          const own = {
            ...alloy,
            solidusC: figure(Math.min(...melts)),
            liquidusC: figure(Math.max(...melts)),
            pourLowC: figure(Math.min(...pours)),
            pourHighC: figure(Math.max(...pours)),
          };
          const found = numbersIn(pageOf({ ...start, ...draft, links }, own));
          expect(found.filter((value) => !Number.isFinite(value))).toEqual([]);
        },
      ),
      { numRuns: 200 },
    ));
});
