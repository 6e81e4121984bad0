import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test("a coat is weighed dry: three taps a weighing, and the screen says which method spoke", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const { tap, key } = maker;
  const drying = page.getByRole("region", { name: /^Coat 1: / });

  const type = async (grams: string): Promise<void> => {
    for (const mark of grams)
      await tap(page.getByRole("button", { name: mark === "." ? "Decimal mark" : mark, exact: true }));
  };
  /** From the open piece: Weigh, the number, Log; back on the piece. */
  const weigh = async (grams: string, says: RegExp): Promise<void> => {
    await tap(page.getByRole("link", { name: "Weigh", exact: true }).first());
    await type(grams);
    await tap(key(says));
    await maker.onScreen("Heron");
  };

  await test.step("the bare pattern is weighed before its first dip", async () => {
    await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.openPiece("Heron");
    // No coat is on that asks for a weighing: it lies with all that can be logged.
    await tap(page.getByRole("button", { name: "Log", exact: true }));
    await weigh("1180.2", /^Log 1180\.2 g, before a dip/);
  });

  await test.step("drained and stuccoed, the log guesses which of the two it is", async () => {
    await maker.dipCoat("Prime", "Heron");
    await maker.openPiece("Heron");
    await weigh("1240.2", /^Log 1240\.2 g, just drained/);
    await weigh("1300.3", /^Log 1300\.3 g, just stuccoed/);
  });

  await test.step("half dry, the weight says so with its error, and when to weigh again", async () => {
    await maker.waitHours(0.4);
    await weigh("1294.6", /^Log 1294\.6 g, while it dries/);
    await expect(drying).toContainText(/Weight against dry weight .*: 50% of all its water left, ± \d+%/);
    await expect(drying).toContainText(
      /Weigh it again at .* on a 0\.1.g scale: the same weight then means dry/,
    );
  });

  await test.step("the next weighing begins near what the balance will show, and is three taps", async () => {
    await maker.waitHours(1.2);
    const before = hands.taps();
    await tap(page.getByRole("link", { name: "Weigh", exact: true }).first());
    await expect(page.getByText(/^About 1,28\d/)).toBeVisible();
    await tap(page.getByRole("button", { name: /^Weight: .* more$/ }));
    await tap(key(/^Log 1\d\d\d/));
    expect(hands.taps() - before).toBe(3);
    await maker.onScreen("Heron");
  });

  await test.step("at its dry mass, and the same again later, it is dry; the page says when to weigh again", async () => {
    await maker.waitHours(0.2);
    await weigh("1288.9", /^Log 1288\.9 g, while it dries/);
    await expect(drying).toContainText(
      /Weigh it again at .* on a 0\.1.g scale: the same weight then means dry/,
    );
    await maker.waitHours(0.7);
    // The coat counts as dry by now, and its card asks for no weight any more.
    await tap(page.getByRole("button", { name: "Log", exact: true }));
    await weigh("1288.9", /^Log 1288\.9 g, while it dries/);
    await expect(page.getByRole("region", { name: "Coat 1: dry" })).toBeVisible();
    await expect(drying).toContainText("It has stopped losing weight (weighed 1,288.9");
  });
});
