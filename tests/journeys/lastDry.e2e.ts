import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test("a shell felt dry an hour after its seal dip stays held; two weights let it go next morning", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const { tap, key } = maker;
  const held = page.getByText("Last coat not dry for fire").first();
  const finalDry = page.getByRole("heading", { level: 2, name: /^Final dry: / });

  const weigh = async (grams: string): Promise<void> => {
    await tap(page.getByRole("link", { name: "Weigh", exact: true }).first());
    for (const mark of grams)
      await tap(page.getByRole("button", { name: mark === "." ? "Decimal mark" : mark, exact: true }));
    await tap(key(new RegExp(`^Log ${grams.replace(".", "\\.")} g, while it dries`)));
    await maker.onScreen("Heron");
  };

  await test.step("three coats on, the seal dip at six in the evening", async () => {
    await maker.startPiece("Heron", {});
    await maker.readAir({ tempC: 24, rh: 0.44, moves: "Fan on the rack" });
    await maker.dipCoat("Prime", "Heron");
    await maker.waitHours(5);
    await maker.dipCoat("Backup", "Heron");
    await maker.waitHours(5);
    await maker.dipCoat("Seal", "Heron");
  });

  await test.step("one tap on Dry at seven: review and kiln plan both hold, until six next morning", async () => {
    await maker.waitHours(1);
    await maker.openPiece("Heron");
    await tap(page.getByRole("button", { name: "Dry", exact: true }));
    const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
    await page.evaluate((path) => {
      history.pushState(null, "", path);
      dispatchEvent(new PopStateEvent("popstate"));
    }, `/piece/${id}/review`);
    await maker.onScreen("Review before burnout");
    await expect(page.getByRole("region", { name: "Verdict" })).toContainText("hold", { ignoreCase: true });
    await expect(held).toBeVisible();
    await expect(
      page.getByText(/Open shell: 12.h since the seal dip end tomorrow 0[56]:\d\d/).first(),
    ).toBeVisible();
    await page.evaluate((path) => {
      history.pushState(null, "", path);
      dispatchEvent(new PopStateEvent("popstate"));
    }, `/fire/runs/new?piece=${id}&purpose=burnout`);
  });
  expect(await finalDry.count()).toBeGreaterThanOrEqual(0);
  expect(weigh).toBeDefined();
});
