import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aheadNow as now, demoAhead } from "../../../tests/demoAhead.ts";
import { shellHeatOf } from "../fire/shellHeat.ts";
import type { Shop } from "../piece/piece.ts";
import { dayShop } from "./dayShop.ts";
import { latestTimes } from "./coatTimes.ts";
import { pieceAhead, waitsForMetal, type PieceAhead } from "./pieceAhead.ts";
import { pourProposal, type PourProposal } from "./pourProposal.ts";

const weekMs = 7 * 24 * hourMs;

/** What the demo leaves open: the volume of the patterns, so that each burnout can be planned. */
const demo = demoAhead({
  "demo-heron": { metalLitre: 0.22 },
  "demo-carp": { metalLitre: 0.49 },
  "demo-plaque": { metalLitre: 0.4 },
});
const { ahead } = demo;
const { shop } = ahead.around;
const [kiln] = shop.kilns;
const [furnace] = shop.furnaces;
if (kiln === undefined || furnace === undefined) throw new Error("the demo has a kiln and a furnace");

const pieces = demo.standings
  .filter(waitsForMetal)
  .map((one) => pieceAhead(one, { ahead, hours: null, isHeld: false }));
const pieceOf = (id: string): PieceAhead => {
  const found = pieces.find((one) => one.id === id);
  if (found === undefined) throw new Error(`${id} does not wait for metal`);
  return found;
};

const proposed = (
  some: readonly PieceAhead[] = pieces,
  {
    inMs = weekMs,
    with: own = shop,
    elsewhere = new Map(),
    planned = new Set(),
  }: {
    inMs?: number;
    with?: Shop;
    elsewhere?: ReadonlyMap<string, string>;
    planned?: ReadonlySet<string>;
  } = {},
): PourProposal => {
  const steps = pourProposal(some, { pourAt: now + inMs, day: dayShop(own, []), elsewhere, planned });
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
};
const goingIds = ({ melts }: PourProposal): readonly string[] =>
  melts.flatMap((melt) => melt.pieces.map(({ of }) => of.id)).toSorted();
const whyOf = ({ left }: PourProposal, id: string) => left.find(({ of }) => of.id === id)?.why;

describe("a pour day proposed", () => {
  it("takes what is ready in time, in one alloy and within the crucible, and says of every other why not", () => {
    const day = proposed();
    expect(goingIds(day)).toEqual(["demo-carp", "demo-plaque"]);
    expect(day.how).toBe("exact");
    expect(whyOf(day, "demo-wren")).toEqual({ code: "stopped", stop: { code: "no-recipe" } });
    expect(whyOf(day, "demo-dancer")).toEqual({ code: "other-alloy", alloyIds: ["c87300"] });
    const heron = whyOf(day, "demo-heron");
    expect(heron).toMatchObject({ code: "crucible-full", crucibleId: furnace.id });
    if (heron?.code !== "crucible-full") throw new Error("the heron finds the crucible full");
    expect(heron.needsKg).toBeGreaterThan(heron.leftKg);
    const everyone = [...goingIds(day), ...day.left.map(({ of }) => of.id)].toSorted();
    expect(everyone).toEqual(pieces.map(({ id }) => id).toSorted());
  });

  it("weighs in what the melt's own plan does", () => {
    const [melt] = proposed().melts;
    // 4.2 + 3.4 kg of guessed metal, 20 % margin (common practice, no source): 9.12 kg molten.
    expect(melt?.charge.parts.meltKg).toBeCloseTo(7.6 * 1.2, 6);
    // Crucible of 1.8 L filled to 75 % (common practice, no source) with silicon bronze.
    expect(melt?.mostKg).toBeCloseTo(9.99, 2);
  });

  it("plans the fire of all in a kiln together, which is no shorter than alone", () => {
    const together = proposed().kilns[0]?.fire.minutes ?? 0;
    const alone = proposed([pieceOf("demo-carp")]).kilns[0]?.fire.minutes ?? Infinity;
    expect(alone).toBeLessThan(Infinity);
    expect(together).toBeGreaterThanOrEqual(alone);
  });

  it("is too late for a piece by so much, and gives the first hour at which it could go", () => {
    const carp = pieceOf("demo-carp");
    const why = whyOf(proposed([carp], { inMs: 40 * hourMs }), "demo-carp");
    if (why?.code !== "too-late") throw new Error("the carp is too late");
    expect(why.verdict.lateMs).toBeGreaterThan(0);
    const soonestMs = why.verdict.soonestAt - now;
    expect(goingIds(proposed([carp], { inMs: soonestMs }))).toEqual(["demo-carp"]);
    const before = proposed([carp], { inMs: soonestMs - 5 * minuteMs });
    expect(before.kilns[0]?.pieces[0]?.verdict.is).not.toBe("sure");
  });

  it("counts a piece as perhaps where only the middle figures bring it through", () => {
    const carp = pieceOf("demo-carp");
    const { late, middle } = carp.ways;
    if (!late.ok || !middle.ok) throw new Error("the carp has ways");
    const minutes = proposed([carp]).kilns[0]?.fire.minutes ?? 0;
    const between = (late.dryAt + middle.dryAt) / 2 + minutes * minuteMs;
    const day = proposed([carp], { inMs: between - now });
    expect(day.kilns[0]?.pieces[0]?.verdict.is).toBe("perhaps");
  });

  it("lets a piece be that another planned pour has", () => {
    const day = proposed(pieces, { elsewhere: new Map([["demo-plaque", "pour-7"]]) });
    expect(whyOf(day, "demo-plaque")).toEqual({ code: "in-other-pour", pourId: "pour-7" });
  });

  it("never gives up what the pour asked about has in its plan for more of another alloy", () => {
    const day = proposed(pieces, { planned: new Set(["demo-dancer"]) });
    expect(goingIds(day)).toEqual(["demo-dancer"]);
    expect(whyOf(day, "demo-carp")).toEqual({ code: "other-alloy", alloyIds: ["a356"] });
  });

  it("takes section and heat as the piece's own pour is planned, and all in its kiln leave it with the hottest", () => {
    const planned = { thinnestMm: 3, shellC: 940 };
    const plaque = pieceAhead(demo.standing("demo-plaque"), { ahead, hours: null, isHeld: false, planned });
    const thin = shellHeatOf(plaque.alloy!, 3);
    expect(plaque).toMatchObject({ leaveC: 940, heat: { sectionMm: 3, lowC: thin?.lowC } });
    const both = [pieceOf("demo-carp"), plaque];
    const [group] = proposed(both, { planned: new Set(["demo-plaque"]) }).kilns;
    expect(group?.pieces.map(({ of }) => of.id).toSorted()).toEqual(["demo-carp", "demo-plaque"]);
    expect(group?.leaveC).toBe(940);
    expect(group?.heat?.lowC).toBe(Math.max(thin!.lowC, pieceOf("demo-carp").heat!.lowC));
    // The preheat to it takes longer than to the usual heat.
    const [usual] = proposed([pieceOf("demo-carp"), pieceOf("demo-plaque")]).kilns;
    expect(usual?.leaveC).toBeLessThan(940);
    expect(group?.fire.minutes).toBeGreaterThan(usual?.fire.minutes ?? Infinity);
  });

  it("leaves whom the fire of all together makes too late, though alone it would be in time", () => {
    const plaque = pieceOf("demo-plaque");
    const dry = plaque.dry ?? plaque.standing;
    const plan = { ...dry.piece.plan, material: "resin" } as const;
    const printed = {
      ...plaque,
      id: "printed",
      dry: { ...dry, piece: { ...dry.piece, id: "printed", plan } },
    };
    const [alone] = proposed([plaque]).kilns;
    const inMs = (alone?.fire.minutes ?? 0) * minuteMs + 2 * hourMs;
    expect(goingIds(proposed([printed], { inMs }))).toEqual(["printed"]);
    const day = proposed([plaque, printed], { inMs });
    expect(goingIds(day)).toHaveLength(1);
    const [left] = day.left;
    if (left?.why.code !== "with-others") throw new Error("one of them is left by the other's burnout");
    expect(left.why.minutes * minuteMs - left.why.lateMs).toBeCloseTo(inMs, -3);
  });

  it("names what nobody said: alloy, metal, and what a burnout wants to know", () => {
    const bare = demoAhead({ "demo-carp": { alloyId: undefined }, "demo-heron": { metalKg: undefined } });
    const some = ["demo-carp", "demo-heron", "demo-plaque"].map((id) =>
      pieceAhead(bare.standing(id), { ahead: bare.ahead, hours: null, isHeld: false }),
    );
    const day = proposed(some);
    expect(whyOf(day, "demo-carp")).toEqual({ code: "no-alloy" });
    expect(whyOf(day, "demo-heron")).toEqual({ code: "no-metal" });
    expect(goingIds(day).length + day.left.length).toBe(3);
  });

  it("checks nothing against a crucible or a kiln that is not set up, and says it has none", () => {
    const day = proposed(pieces, { with: { ...shop, furnaces: [], kilns: [] } });
    expect(day.melts[0]).toMatchObject({ furnace: null, mostKg: null });
    expect(day.kilns[0]).toMatchObject({ kiln: null, room: null });
    expect(goingIds(day).length).toBeGreaterThan(2);
  });

  it("counts shells of unknown size as unknown, and holds one that is known against the kiln's room", () => {
    const [first] = proposed().kilns;
    expect(first).toMatchObject({ sizeUnknown: 2, room: { knownL: 0 } });
    const handle = pieceOf("demo-handle");
    expect(handle.litre).toBeGreaterThan(0.1);
    const large = { ...handle, litre: 200 };
    expect(whyOf(proposed([large]), "demo-handle")).toMatchObject({
      code: "kiln-full",
      litre: 200,
      leftL: 72,
    });
  });

  it("says which kiln heat a shell wants that the others do not allow", () => {
    const hot = { ...pieceOf("demo-handle"), alloyId: "c87300", heat: null };
    const odd = { ...hot, id: "odd", heat: { lowC: 900, highC: 950 } as never, leaveC: 940 };
    const carp = pieceOf("demo-carp");
    expect(whyOf(proposed([carp, odd]), "odd")).toEqual({
      code: "kiln-heat",
      lowC: 900,
      highC: 950,
      kilnLowC: 500,
      kilnHighC: 700,
    });
    expect(whyOf(proposed([{ ...odd, leaveC: 1300 }]), "odd")).toMatchObject({
      code: "no-fire",
      fire: { purpose: "preheat", refused: { code: "kiln-below-preheat", neededC: 1300, maxC: kiln.maxC } },
    });
  });

  it("makes it: coats put on at the latest times leave every piece that goes dry by its hour", () => {
    for (const { pieces: inside } of proposed().kilns)
      for (const { of, verdict } of inside) {
        const way = of.ways.late;
        const asked = { standing: of.standing, ahead, hours: null };
        const times = latestTimes(asked, { way, by: "late", dryBy: verdict.dryBy });
        expect(verdict.is).toBe("sure");
        expect(times).toHaveLength(of.coats.length);
      }
  });

  it("takes no fewer pieces with one more kiln, at any hour, and never one twice", () => {
    fc.assert(
      fc.property(fc.integer({ min: 24, max: 300 }), fc.subarray([...pieces]), (inH, some) => {
        const one = proposed(some, { inMs: inH * hourMs });
        const two = proposed(some, {
          inMs: inH * hourMs,
          with: { ...shop, kilns: [...shop.kilns, { ...kiln, id: "second" }] },
        });
        expect(goingIds(two).length).toBeGreaterThanOrEqual(goingIds(one).length);
        expect(new Set(goingIds(one)).size).toBe(goingIds(one).length);
        expect(goingIds(one).length + one.left.length).toBe(some.length);
      }),
      { numRuns: 40 },
    );
  });
});
