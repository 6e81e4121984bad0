import { expect, test } from "vitest";
import type { Pour } from "../../logbook/fireStates.ts";
import { builtInShop } from "../../logbook/builtIns.ts";
import type { PourParts } from "./pourParts.ts";
import { sheetLines, sheetVerdict } from "./sheetItems.ts";

const plan: Pour["plan"] = {
  id: "plan",
  at: 0,
  pourAt: 0,
  pieceIds: [],
  bed: "air",
  shellC: 600,
  metalC: 1150,
  steps: [],
};
const bare: PourParts = {
  items: [],
  shells: [],
  run: null,
  melt: null,
  furnace: null,
  power: null,
  alloy: null,
  figures: null,
  metalKg: null,
  wantedKg: null,
  fill: null,
  airC: 20,
  shop: builtInShop,
};
const checked = (item: string, ok: boolean): Pour["checks"][number] => ({ id: item, at: 1, item, ok });
const lineOf = (id: string, checks: Pour["checks"], parts: PourParts = bare) =>
  sheetLines({ plan, checks }, parts).find((line) => line.id === id);

test("what hands must look at is not looked at until someone did", () => {
  expect(lineOf("path-clear", [])?.state).toBe("open");
  expect(lineOf("path-clear", [checked("path-clear", true)])?.state).toBe("ok");
  expect(lineOf("path-clear", [checked("path-clear", false)])?.state).toBe("blocked");
});

test("metal that is short can't be ticked away, metal nobody weighed can be looked at", () => {
  const short = { ...bare, metalKg: 3, wantedKg: 4 };
  expect(lineOf("metal-enough", [checked("metal-enough", true)], short)?.state).toBe("blocked");
  expect(lineOf("metal-enough", [], { ...bare, metalKg: 4, wantedKg: 4 })?.state).toBe("ok");
  expect(lineOf("metal-enough", [])?.state).toBe("open");
  expect(lineOf("metal-enough", [checked("metal-enough", true)])?.state).toBe("ok");
});

test("a crucible too full to lift blocks", () => {
  const fill = { meltMl: 900, share: 0.9, fits: false, mostKg: 6 };
  expect(lineOf("crucible-fill", [], { ...bare, fill })?.state).toBe("blocked");
});

test("dry sand is asked for only where there is sand", () => {
  expect(lineOf("sand-dry", [])).toBeUndefined();
  const inSand = sheetLines({ plan: { ...plan, bed: "hot-sand" }, checks: [] }, bare);
  expect(inSand.some(({ id }) => id === "sand-dry")).toBe(true);
});

test("go needs every line in order, or a written reason for each that is not", () => {
  const lines = sheetLines({ plan, checks: [checked("path-clear", false)] }, bare);
  const blank = sheetVerdict(lines, {});
  expect(blank.isGo).toBe(false);
  expect(blank.against.map(({ id }) => id)).toContain("path-clear");
  const reasons = Object.fromEntries(lines.map(({ id }) => [id, "looked at by Ada"]));
  const all = sheetVerdict(lines, reasons);
  expect(all.isGo).toBe(true);
  expect(all.passed.find(({ item }) => item === "path-clear")?.reason).toBe("looked at by Ada");
  expect(sheetVerdict(lines, { ...reasons, "path-clear": "   " }).isGo).toBe(false);
});

test("of no shells, or shells that are not on this device, nothing is in order by itself", () => {
  const of = (pieceIds: readonly string[]) =>
    sheetLines({ plan: { ...plan, pieceIds }, checks: [checked("review-clear", true)] }, bare);
  const shellLines = [
    "review-clear",
    "shell-sound",
    "shell-fired",
    "wall-carries",
    "shell-hot",
    "vents-noted",
  ];
  for (const [pieceIds, code] of [
    [[], "no-shells"],
    [["gone"], "shells-not-here"],
  ] as const) {
    const lines = of(pieceIds).filter(({ id }) => shellLines.includes(id));
    expect(lines.map(({ state }) => state)).toEqual(shellLines.map(() => "blocked"));
    expect(lines[0]?.why).toEqual([{ shell: null, code }]);
  }
});
