import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test("a damp night is seen coming, what would help is read, and so is the last drying of a finished shell", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T15:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  await tap(key("Look at a demo shop"));
  await expect(page.getByRole("list", { name: "Pieces in work" })).toContainText("Demo: plaque");
  await maker.startPiece("Badger", { recipe: "General bronze (9 coats)" });

  await test.step("a day and a night of readings, and a first coat on the second afternoon", async () => {
    await maker.readAir({ tempC: 16, rh: 0.6, moves: "Still room" });
    for (const air of [
      { tempC: 12, rh: 0.82 },
      { tempC: 10, rh: 0.9 },
      { tempC: 16, rh: 0.62 },
    ]) {
      await maker.waitHours(8);
      await maker.readAir(air);
    }
    await maker.openPiece("Badger");
    await maker.openLog("A coat");
    await tap(key("Coat done"));
    await expect(page.getByRole("region", { name: "What is next" })).toContainText("1 of 9 coats");
    await maker.goTo("Rack");
  });

  await test.step("the next two days show the night, in this room and not in the other", async () => {
    await tap(page.getByRole("link", { name: "The next 48 hours" }));
    await maker.onScreen("The next 48 hours");
    const room = page.getByRole("region", { name: "Drying room", exact: true });
    const nights = room.getByRole("list", { name: "Damp ahead" }).getByRole("listitem");
    await expect(nights.first()).toContainText(
      /to tomorrow \d\d:\d\d: damp, up to \d\d%; too damp .*nothing dries then/,
    );
    await expect(nights).toHaveCount(2);
    await expect(page.getByRole("region", { name: "Demo: drying room" })).toContainText(
      "No damp stretch ahead.",
    );
    await expect(page.getByRole("region", { name: "Proposal" })).toContainText("Badger");
    await tap(page.getByText("As a table"));
    await expect(page.getByRole("row", { name: /^Badger/ })).toContainText(/\d\d:\d\d/);
    await tap(room.getByRole("link", { name: /^Badger/ }));
    await maker.onScreen("Badger");
  });

  await test.step("what would help is ranked, with what a prime coat must be spared", async () => {
    await tap(page.getByRole("link", { name: "What would help" }));
    await maker.onScreen("What would help");
    await expect(page.getByText(/^For the air as last read, .* ago: 16.°C, 62%, still room/)).toBeVisible();
    const lines = page.getByRole("list", { name: /^What would help/ });
    await expect(lines.getByText(/saves (\d+ h|\d+ min)/).first()).toBeVisible();
    await expect(lines.getByText(/no direct fan for the first hour/).first()).toBeVisible();
  });

  await test.step("a shell with all its coats on says how long it hangs before the fire, and why", async () => {
    await maker.openPiece("Demo: plaque with two fish");
    await tap(page.getByRole("link", { name: "Final dry before burnout" }));
    await maker.onScreen("Final dry before burnout");
    await expect(page.getByText(/^(Over since|Review not before) /)).toBeVisible();
    await expect(page.getByText(/Slowest: open all round/)).toBeVisible();
    await expect(page.getByText(/g\/m² in 9 coats/)).toBeVisible();
  });
});
