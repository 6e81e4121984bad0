import { expect, test } from "vitest";
import type { Melt, Pour } from "../fire/fireStates.ts";
import { meltFor, piecesOfMelt } from "./meltTie.ts";

const melt = (id: string, at: number, pieceIds: readonly string[], dropped = false): Melt => ({
  id,
  plan: { id: `${id} plan`, at, furnaceId: null, alloyId: "c90300", pieceIds, items: [], pourC: 1150 },
  pieceIds,
  startedAt: null,
  hotFurnace: null,
  readings: [],
  lastAt: at,
  ended: dropped ? { id: "end", at, pouredKg: 0, piggedKg: 0, dropped: true } : null,
});
const pour = (id: string, at: number, pieceIds: readonly string[], meltId?: string, isOver = false) =>
  ({
    id,
    plan: { at, meltId },
    pieceIds,
    ended: isOver ? { at } : null,
  }) as unknown as Pour;
const piece = (id: string, pours: readonly { at: number; pourId?: string; meltId?: string }[] = []) => ({
  id,
  pours: pours.map((one) => ({
    id: `${id} ${one.at}`,
    metalC: null,
    shellC: null,
    massKg: null,
    outOfKilnMin: null,
    ...one,
  })),
});

const melts = [melt("early", 10, ["finial"]), melt("late", 50, ["finial"]), melt("other", 20, [])];
const pours = [pour("p1", 15, ["finial", "vase"], "other", true)];

test("a poured piece: the melt its line names, else its pour's, else the last planned for it before the metal", () => {
  const of = (own: Parameters<typeof piece>[1]) =>
    meltFor(piece("finial", own), { melts, pours })?.id ?? null;
  expect(of([{ at: 30, meltId: "late", pourId: "p1" }])).toBe("late");
  expect(of([{ at: 30, pourId: "p1" }])).toBe("other");
  expect(of([{ at: 30 }])).toBe("early");
  expect(of([{ at: 60 }])).toBe("late");
  expect(of([{ at: 5 }])).toBeNull();
});

test("a piece that waits: the melt of its open pour, else the last that is planned for it, never one put away", () => {
  const open = [pour("p2", 70, ["vase"], "other")];
  expect(meltFor(piece("vase"), { melts, pours: open })?.id).toBe("other");
  expect(meltFor(piece("vase"), { melts, pours })).toBeNull();
  expect(meltFor(piece("finial"), { melts, pours: [] })?.id).toBe("late");
  const away = [melt("away", 80, ["finial"], true), ...melts];
  expect(meltFor(piece("finial"), { melts: away, pours: [] })?.id).toBe("late");
});

test("each piece is under the one melt that it shows", () => {
  const pieces = [
    piece("finial", [{ at: 30, pourId: "p1" }]),
    piece("vase", [{ at: 31, pourId: "p1", meltId: "late" }]),
    piece("lantern"),
  ];
  const under = melts.map(({ id }) => piecesOfMelt({ id }, pieces, { melts, pours }).map((one) => one.id));
  expect(under).toEqual([[], ["vase"], ["finial"]]);
});
