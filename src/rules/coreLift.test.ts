import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import type { PiecePlan } from "../logbook/entries/pieceBodies.ts";
import { alloyOf } from "../trade/metals/alloys.ts";
import { pinYieldMPa } from "../physics/shell/coreLift.ts";
import { coreLift } from "./coreLift.ts";
import { findingsFor } from "./all.ts";

const withCore = (core: PiecePlan["core"], hour = 119) => givenCoated({ core }).standing(hour);

// A litre in silicon bronze lifts 60.8 N and asks for 1.658 times that, 100.9 N, of pins of 3 mm at its liquidus.
const perPin = (Math.PI / 4) * 9 * (pinYieldMPa(alloyOf("c87300")?.liquidusC.value ?? NaN) / Math.sqrt(3));
const enough = Math.ceil(100.9 / perPin);

test("pins that hold the lift with room to spare are no finding, one fewer is a hold", () => {
  expect(coreLift(withCore({ litre: 1, pins: enough, pinMm: 3 }))).toEqual([]);
  const short = coreLift(withCore({ litre: 1, pins: enough - 1, pinMm: 3 }));
  expect(told(short)).toEqual(["hold floats"]);
  expect(short[0]?.figures["liftN"]?.value).toBeCloseTo(60.8, 1);
  expect(short[0]?.figures["needN"]?.value).toBeCloseTo(100.9, 0);
});

test("a neck wide enough holds without a pin, a narrow one does not", () => {
  // π·d³·2/32/75 N: 33.8 mm hold 101 N.
  expect(coreLift(withCore({ litre: 1, mouthMm: 35, depthMm: 150 }))).toEqual([]);
  expect(told(coreLift(withCore({ litre: 1, mouthMm: 33, depthMm: 150 })))).toEqual(["hold floats"]);
});

test("a core that nothing is known to hold is a note while it is coated and to be checked after", () => {
  const piece = givenPiece({ ...knownPlan, core: { litre: 1 } });
  expect(told(coreLift(piece.standing(1)))).toEqual(["note not-known"]);
  expect(told(coreLift(withCore({ litre: 1 })))).toEqual(["watch not-known"]);
  expect(told(coreLift(withCore({ litre: 1, pins: 6 })))).toEqual(["watch not-known"]);
});

test("no core, or the metal in: nothing is said", () => {
  expect(coreLift(givenCoated().standing(119))).toEqual([]);
  const piece = givenCoated({ core: { litre: 1, pins: 0, pinMm: 3 } });
  expect(findingsFor(piece.standing(119)).map(({ rule }) => rule)).toContain("core-lift");
  piece.log(120, "metal-poured", { metalC: 1150, shellC: 600, massKg: 4, outOfKilnMin: 3 });
  expect(coreLift(piece.standing(121))).toEqual([]);
});

test("the inside of a core dries through its mouth: it is a place of the final dry", () => {
  const places = (core: PiecePlan["core"]) => withCore(core, 90).finalDry?.places.map((one) => one.geometry);
  expect(places(undefined)).toEqual(["open"]);
  expect(places({ litre: 1 })).toEqual(["blind", "open"]);
  expect(places({ litre: 0.3, mouthMm: 30, depthMm: 150 })).toEqual(["blind", "open"]);
  // A bowl: as wide as deep.
  expect(places({ litre: 0.3, mouthMm: 90, depthMm: 40 })).toEqual(["recess", "open"]);
});
