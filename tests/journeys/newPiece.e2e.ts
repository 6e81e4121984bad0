import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test("a newcomer takes a first piece from its name to a signed review, with no network and one coat too early", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key, choose, tile } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const findings = page.getByRole("region", { name: "Findings" });
  const verdict = page.getByRole("region", { name: "Verdict" });

  await test.step("the empty rack says how to begin, and a name is enough", async () => {
    await expect(page.getByText("The rack is empty")).toBeVisible();
    await tap(page.getByRole("link", { name: "Start the first piece" }));
    await tap(key("Start and plan it"));
    await expect(page.getByRole("alert")).toContainText("name");
    await page.getByLabel("Name").fill("Heron");
    await tap(key("Start and plan it"));
  });

  await test.step("what is known goes in the plan, and the piece says what comes first", async () => {
    await maker.fillPlan({
      material: "Wax",
      recipe: "General bronze (9 coats)",
      flatMm: [40, 90],
      headMm: 250,
      alloy: "Silicon bronze",
      metalKg: 4,
    });
    await expect(next).toContainText("Dip coat 1: prime, 80–120 mesh");
  });

  await test.step("the first coat is tapped at the bucket the piece leads to", async () => {
    await tap(next.getByRole("link", { name: "Go to the bucket" }));
    await tap(key(/^Prime/));
    await expect(tile("Heron")).toContainText("First coat");
    await maker.coatDone("Heron");
    await maker.leaveBucket();
  });

  await test.step("with no reading of the room no time is given, and with one it is", async () => {
    await maker.openPiece("Heron");
    await expect(findings).toContainText("No room reading");
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.openPiece("Heron");
    await expect(next).toContainText(/likely \d\d:\d\d, between \d\d:\d\d and \d\d:\d\d/);
    await expect(findings.getByText("No room reading")).toBeHidden();
  });

  const dry = /Coat \d+ (is dry|likely dry)/;
  const coatWhenDry = async (kind: "Prime" | "Intermediate" | "Backup" | "Seal", rh: number): Promise<void> => {
    await maker.readAir({ tempC: 21, rh });
    await maker.beginDip(kind);
    console.log(kind, await tile("Heron").innerText());
    await maker.coatDone("Heron");
    await maker.leaveBucket();
  };
  await maker.waitHours(5);
  await coatWhenDry("Prime", 0.55);
  await maker.waitHours(5);
  await coatWhenDry("Intermediate", 0.58);
  await maker.waitHours(14);
  await coatWhenDry("Backup", 0.6);
  await maker.waitHours(6);
  await coatWhenDry("Backup", 0.53);
  await maker.waitHours(1);
  await coatWhenDry("Backup", 0.53);
  await maker.waitHours(15);
  await coatWhenDry("Backup", 0.48);
  await maker.waitHours(6);
  await coatWhenDry("Backup", 0.45);
  await maker.waitHours(6);
  await coatWhenDry("Seal", 0.45);
  await maker.openPiece("Heron");
  console.log(await page.locator("main").innerText());
  await tap(page.getByRole("link", { name: "Review", exact: true }));
  console.log(await page.locator("main").innerText());
  await maker.waitHours(2); 
  await maker.readAir({ tempC: 21, rh: 0.47 });
  await maker.waitHours(14); 
  await maker.readAir({ tempC: 21, rh: 0.47 });
  await maker.openPiece("Heron");
  await tap(page.getByRole("link", { name: "Review", exact: true }));
  console.log(await page.locator("main").innerText());
});
