import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test("a board on the wall follows what is logged at the bucket, and rings nothing but what its key allows", async ({
  page,
  context,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.readAir({ tempC: 21, rh: 0.5 });
  await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });

  const wall = await context.newPage();
  await wall.setViewportSize({ width: 1280, height: 800 });
  await wall.goto(new URL("/board", page.url()).href);
  const toDo = wall.getByRole("region", { name: "To do now" });
  await expect(toDo).toContainText(/Heron\s*Dip coat 1: prime/);
  await expect(wall.getByRole("navigation")).toHaveCount(0);
  await expect(wall.getByRole("button")).toHaveText(["Sound on"]);
  await expect(wall.getByRole("list", { name: "Pour, air and slurry" })).toContainText(
    /Drying room 21\s°C 50%/,
  );

  await maker.dipCoat("Prime", "Heron");
  await expect(toDo).toContainText("Nothing. All is drying.");
  await expect(wall.getByRole("region", { name: "Next" })).toContainText(
    /\d\d:\d\d Heron: check if coat 1 is dry/,
  );

  await wall.getByRole("button", { name: "Sound on" }).click();
  await expect(wall.getByRole("button")).toHaveCount(0);
});
