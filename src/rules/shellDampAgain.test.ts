import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { shellDampAgain } from "./shellDampAgain.ts";

const fired = () => {
  const piece = givenCoated();
  piece.log(121, "burnout-started", {});
  piece.log(125, "burnout-ended", { result: "clean" });
  return piece;
};

test.each([
  [149, []],
  [149.1, ["hold cold"]],
])("last hot at hour 125, looked at in hour %d: %j", (hour, expected) => {
  expect(told(shellDampAgain(fired().standing(hour)))).toEqual(expected);
});

test("rinsed it is held at once, dried for an hour at 110 °C it is not", () => {
  const piece = fired();
  piece.log(126, "shell-rinsed", {});
  const [found] = shellDampAgain(piece.standing(128));
  expect(found).toMatchObject({
    level: "hold",
    variant: "rinsed",
    figures: { ageH: { value: 2 }, fromC: { value: 110 }, toC: { value: 150 }, holdMin: { value: 60 } },
  });
  piece.log(129, "shell-preheated", { shellC: 110, heldMin: 60 });
  expect(shellDampAgain(piece.standing(129.1))).toEqual([]);
});

test("before its fire, back among its coats, or poured, it says nothing", () => {
  const wet = givenCoated();
  wet.log(121, "dewaxed", { way: "steam", minutes: 20 });
  expect(shellDampAgain(wet.standing(122))).toEqual([]);
  const recoated = fired();
  recoated.log(126, "shell-rinsed", {});
  recoated.coat(127);
  expect(shellDampAgain(recoated.standing(160))).toEqual([]);
  const poured = fired();
  poured.log(126, "metal-poured", { metalC: 720, shellC: 20, massKg: 1, outOfKilnMin: null });
  expect(shellDampAgain(poured.standing(200))).toEqual([]);
});
