import { render } from "@testing-library/react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, type Desk } from "../../../../tests/demoDesk.tsx";
import type { Finding, Level } from "../../../rules/finding.ts";
import { ShopProvider } from "../../base/state/shop.tsx";
import { FindingList } from "./FindingList.tsx";

let desk: Desk;
beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

const crack = (where: string, level: Level): Finding => ({
  rule: "open-crack",
  variant: level === "note" ? "trimmed-off" : "open",
  level,
  figures: {},
  texts: { where, kind: "chip" },
  entries: [`crack-${where}`],
  source: "common practice, no source",
});
const noSeal: Finding = {
  rule: "no-seal-coat",
  variant: "left-out",
  level: "watch",
  figures: {},
  texts: {},
  entries: ["coat-8"],
  source: "common practice, no source",
};

function show(findings: readonly Finding[]): HTMLElement {
  return render(
    <ShopProvider shop={desk.shop}>
      <FindingList findings={findings} />
    </ShopProvider>,
  ).container;
}

test("holds and watches stand in full, each note behind a line of its own that opens", async () => {
  const shown = show([crack("foot", "hold"), noSeal, crack("rim", "note"), crack("sprue", "note")]);
  await expect.element(page.getByRole("heading", { name: "Chip, not repaired" })).toBeVisible();
  await expect.element(page.getByRole("heading", { name: "No seal coat" })).toBeVisible();
  const folds = [...shown.querySelectorAll<HTMLDetailsElement>("section > div > details")];
  expect(folds.map(({ open }) => open)).toEqual([false, false]);
  expect(Math.max(...folds.map((fold) => fold.getBoundingClientRect().height))).toBeLessThanOrEqual(60);
  await expect.element(page.getByText("Where: rim.")).not.toBeVisible();
  folds[0]?.querySelector("summary")?.click();
  await expect.element(page.getByText("Where: rim.")).toBeVisible();
  await expect.element(page.getByText("Where: sprue.")).not.toBeVisible();
});

test("with nothing found nothing is shown", () => {
  expect(show([]).textContent).toBe("");
});
