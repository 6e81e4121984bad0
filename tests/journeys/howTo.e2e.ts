import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test.use({ timezoneId: "Europe/Berlin" });

/** Opens what the link of a form shows, and comes back to the form. */
async function lookUp(page: Page, name: string, form: string | RegExp): Promise<void> {
  const hands = handsOn(page);
  const { tap } = hands;
  const { onScreen } = makerAt(page, hands);
  const link = page.getByRole("link", { name: new RegExp(`^How to ${name}`, "i") });
  const box = await link.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  await tap(link);
  await onScreen(new RegExp(`^${name}`));
  await expect(page.getByRole("img").first()).toBeVisible();
  await expect(page.getByText("What can go wrong")).toBeVisible();
  await tap(page.getByRole("link", { name: "Back to the form" }));
  await onScreen(form);
}

test("without a network, each form leads to the page that shows its work, and the page back to it", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const at = (path: string) => page.goto(new URL(path, page.url()).href);

  await at("/buckets/first-prime/read");
  await maker.onScreen("Which cup?");
  await hands.tap(maker.key(/^Zahn 4/));
  await lookUp(page, "Read a flow cup", "First dip");

  await at("/rooms/first");
  await maker.onScreen("Drying room");
  await lookUp(page, "Hang a hygrometer", "Drying room");

  await at("/figures");
  await lookUp(page, "Cut and break test bars", "Figures");

  await at("/settings");
  await lookUp(page, "Mount the phone and a foot switch", "Settings");
  await lookUp(page, "Make the first backup", "Settings");

  await maker.goTo("Rack");
  await maker.startPiece("Gate finial");
  await maker.openPiece("Gate finial");
  const piece = new URL(page.url()).pathname;
  await at(`${piece}/weigh`);
  await maker.onScreen("Weigh");
  await lookUp(page, "Weigh a shell", "Weigh");
  await at(`${piece}/log/wall-measured`);
  await maker.onScreen("Caliper reading");
  await lookUp(page, "Caliper a shell", "Caliper reading");
});
