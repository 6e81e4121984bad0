import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

const names = ["Heron", "Otter", "Fox", "Medal tree", "Door handle", "Small torso"];

test("six pieces get a coat in one dip in under twenty taps, with an undo and a time put right", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:05:00+01:00");
  const setUp = makerAt(page, handsOn(page));
  for (const name of names) await setUp.startPiece(name, { recipe: "General bronze (9 coats)" });
  await setUp.waitHours(1);

  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const { key, tap, tile, settled, coatDone } = maker;
  await maker.beginDip("Prime");
  const dipped: string[] = [];
  const dipShown = async (): Promise<void> => {
    for (const name of names) {
      if (dipped.includes(name) || !(await tile(name).isVisible())) continue;
      await coatDone(name);
      dipped.push(name);
    }
  };

  await dipShown();
  await tap(key(/^Next pieces/));
  await dipShown();
  const undone = dipped.at(-1) ?? "";
  await tap(key(/^Undo/));
  await expect(page.getByRole("status").filter({ hasText: "Undone" })).toContainText(undone);
  await expect(tile(undone)).toContainText("Coat 1");
  await page.clock.fastForward(1_000);
  await coatDone(undone);
  await tap(key(/^Next pieces/));
  await dipShown();
  expect(dipped.toSorted()).toEqual(names.toSorted());

  const corrected = dipped.at(-2) ?? "";
  await page.clock.fastForward(2_000);
  await tap(key(`Change the time of ${corrected}`));
  await tap(key("15 min earlier"));
  await tap(key(/^Set today 09:00/));
  await expect(settled(corrected)).toContainText("Coat 1 done 09:00");
  await maker.leaveBucket();
  expect(hands.taps()).toBeLessThan(20);

  for (const name of names) {
    await maker.openPiece(name);
    const coats = maker.logLines().filter({ hasText: "Coat 1: prime, 80–120 mesh" });
    const struck = coats.filter({ hasText: /deleted: (undo|time put right)/ });
    const stands = coats.filter({ hasNotText: "deleted" });
    await expect(stands).toHaveCount(1);
    await expect(struck).toHaveCount(name === undone || name === corrected ? 1 : 0);
    await expect(stands).toContainText(name === corrected ? "today 09:00" : /today 09:0[5-9]/);
  }
});
