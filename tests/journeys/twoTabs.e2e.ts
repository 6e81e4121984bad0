import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("two tabs at the bucket give a piece one coat, and the second says it is logged already", async ({
  page,
  context,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const first = makerAt(page, handsOn(page));
  await first.startPiece("Heron", { recipe: "General bronze (9 coats)" });
  await first.beginDip("Prime");

  const other = await context.newPage();
  await other.goto(new URL("/dip", page.url()).href);
  const second = makerAt(other, handsOn(other));
  await expect(second.tile("Heron")).toContainText("Coat 1");

  await test.step("both fingers fall at once", async () => {
    await Promise.all([first.tile("Heron").click({ delay: 60 }), second.tile("Heron").click({ delay: 60 })]);
    await expect(first.settled("Heron")).toContainText("Coat 1 done");
    await expect(second.settled("Heron")).toContainText("Coat 1 done");
    expect(await linesOf(page, "coat-dipped")).toHaveLength(1);
  });
});
