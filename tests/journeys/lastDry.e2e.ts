import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt, type Kind } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

/** "Small fine work" up to its seal, a coat every twelve hours from eight in the morning on. */
const beforeSeal: readonly Kind[] = [
  "Prime",
  "Prime",
  "Intermediate",
  "Backup",
  "Backup",
  "Backup",
  "Backup",
];

test("a shell felt dry an hour after its seal dip is held everywhere; two weights let it go next morning", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const verdict = page.getByRole("region", { name: "Verdict" });
  const findings = page.getByRole("region", { name: "Findings" });
  const notYet = /Open shell: 12.h since the seal dip end (at|tomorrow) 0?6:\d\d/;

  const review = async (): Promise<void> => {
    await maker.openPiece("Heron");
    await tap(page.getByRole("link", { name: "Review", exact: true }));
    await maker.onScreen("Review before burnout");
  };
  const planBurnout = async (): Promise<void> => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await tap(page.getByRole("link", { name: /^Plan a (kiln )?run/ }).first());
    await maker.onScreen("Plan a kiln run");
    const heron = page.getByRole("checkbox", { name: /^Heron/ });
    if (!(await heron.isChecked())) await tap(heron);
  };
  const weigh = async (grams: string): Promise<void> => {
    await maker.openPiece("Heron");
    await tap(page.getByRole("link", { name: "Weigh", exact: true }).first());
    for (const mark of grams)
      await tap(page.getByRole("button", { name: mark === "." ? "Decimal mark" : mark, exact: true }));
    const whileItDries = page.getByRole("radio", { name: /while it dries/i });
    if (await whileItDries.isVisible()) await tap(whileItDries);
    await tap(key(new RegExp(`^Log ${grams.replace(".", "\\.")} g, while it dries`)));
    await maker.onScreen("Heron");
  };

  await test.step("all coats on, the seal dip at six in the evening", async () => {
    await maker.readAir({ tempC: 24, rh: 0.44, moves: "Fan on the rack" });
    await maker.startPiece("Heron", { recipe: "Small fine work (8 coats)" });
    for (const [i, kind] of beforeSeal.entries()) {
      await maker.dipCoat(kind, "Heron");
      await maker.waitHours(i < beforeSeal.length - 1 ? 12 : 10);
    }
    await maker.dipCoat("Seal", "Heron");
  });

  await test.step("at seven one tap says dry: piece, review and kiln plan hold it until six", async () => {
    await maker.waitHours(1);
    await maker.openPiece("Heron");
    await tap(page.getByRole("button", { name: "Dry", exact: true }));
    await expect(next).toContainText(/Final dry.*review not before tomorrow 0?6:\d\d/s);
    await expect(page.getByText(/Felt dry at .*: a touch does not count before fire/)).toBeVisible();
    await review();
    await expect(verdict.getByText("hold", { exact: true })).toBeVisible();
    await expect(findings).toContainText("Last coat not dry for fire");
    await expect(findings).toContainText(notYet);
    await planBurnout();
    await expect(page.getByText(notYet)).toBeVisible();
    await expect(page.getByRole("radio", { name: "Not sure, or damp" })).toBeChecked();
  });

  await test.step("at four in the morning it is held still", async () => {
    await maker.waitHours(9);
    await review();
    await expect(findings).toContainText(notYet);
  });

  await test.step("two weights an hour apart stand still: it is dry by weight, before its hours are over", async () => {
    await weigh("2410");
    await maker.waitHours(1.1);
    await weigh("2409.9");
    await expect(next).toContainText("Review before burnout");
    await expect(page.getByText(/^Dry by weight, 0?5:\d\d/).first()).toBeVisible();
    await review();
    await expect(findings).not.toContainText("Last coat");
    await planBurnout();
    await expect(page.getByRole("radio", { name: "Dry", exact: true })).toBeChecked();
  });
});
