import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("a patch is dry by its own word: not by the outer coat's, and the same is said wherever cracks are counted", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const findings = page.getByRole("region", { name: "Findings" });
  const card = (words: string) => page.getByRole("region", { name: words, exact: true });

  await test.step("two cracks on a coated piece are counted as open", async () => {
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.startPiece("Otter", { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Otter");
    await maker.waitHours(1);
    await maker.openPiece("Otter");
    for (const where of ["left ear", "foot"]) {
      await maker.openLog("Crack found");
      await maker.choose("Kind", "Hairline");
      await maker.logIt({ Where: where });
    }
    await expect(next).toContainText("Repair before going on");
    await expect(next).toContainText("2 cracks, open");
  });

  await test.step("one patched, one open: both states stand in words", async () => {
    await maker.openLog("Crack repaired");
    await tap(page.getByRole("radio", { name: /left ear/ }));
    await maker.logIt({ How: "slurry brushed in" });
    const both = card("2 cracks: 1 open; 1 repaired, not yet dry");
    await expect(both).toContainText("Hairline crack, left ear: repaired, not yet dry");
    await expect(both).toContainText("Hairline crack, foot: open");
    await maker.logFor("Crack repaired", { How: "slurry brushed in" });
    await expect(card("2 cracks, repaired, not yet dry")).toBeVisible();
    await expect(next).not.toContainText("Repair before going on");
  });

  const isWet = async (): Promise<void> => {
    await expect(findings.getByRole("heading", { name: "Hairline crack, repair not yet dry" })).toHaveCount(
      2,
    );
  };

  await test.step("the outer coat felt dry says nothing of a patch, and is said so before the tap", async () => {
    await isWet();
    await expect(
      page.getByText("“Dry” for the outer coat does not cover a repair. Check the repair itself."),
    ).toBeVisible();
    await maker.goTo("Rack");
    await tap(key("Dry: coat 1 of Otter"));
    await expect(page.getByText("Otter: felt dry. Logged.")).toBeVisible();
    await maker.waitHours(5);
    await maker.readAir({ tempC: 21, rh: 0.5 });
    await maker.openPiece("Otter");
    await isWet();
  });

  await test.step("its own key does, with a way back; review and page say the same", async () => {
    await tap(key("Repair is dry: left ear"));
    const one = "2 cracks: 1 repaired, not yet dry; 1 repaired, dry";
    await expect(card(one)).toBeVisible();
    await tap(page.getByRole("link", { name: "Review", exact: true }));
    await expect(page.getByRole("region", { name: "Cracks" })).toContainText(`${one}.`);
    await tap(key("Repair is dry"));
    await expect(page.getByRole("region", { name: "Cracks" })).toContainText("2 cracks, repaired, dry.");
    await tap(key("Undo"));
    await expect(page.getByRole("region", { name: "Cracks" })).toContainText(`${one}.`);
    await tap(key("Repair is dry"));
    await expect(page.getByRole("region", { name: "Cracks" })).toContainText("2 cracks, repaired, dry.");
    await expect(page.getByRole("region", { name: "Findings" })).not.toContainText("repair not yet dry");
    await tap(page.getByRole("link", { name: "Back" }));
    await maker.onScreen("Otter");
    await expect(maker.logLines().filter({ hasText: "Repair is dry" }).first()).toBeVisible();
    expect(await linesOf(page, "patch-dried")).toHaveLength(3);
  });
});
