import { cleanup } from "@testing-library/react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { PiecePage } from "./PiecePage.tsx";

let desk: Desk;

async function openPiece(name: RegExp): Promise<void> {
  const row = (await desk.db.projections.toArray()).find(
    (one) => one.kind === "piece" && name.test(one.state.plan.name),
  );
  const id = row?.stream.replace("piece/", "") ?? "";
  showAt(desk.shop, `/piece/${id}`, { route: "/piece/:id", screen: PiecePage });
  await expect.element(page.getByRole("heading", { level: 1, name })).toBeVisible();
}

const line = (text: string) => page.getByRole("listitem").filter({ hasText: text }).first();

beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

test("one tap says how the coat feels; felt dry before its time it is drying as before, and says from when a touch counts", async () => {
  await openPiece(/heron/);
  await page.getByRole("button", { name: "Dry", exact: true }).click();
  await expect.element(page.getByRole("heading", { name: "Coat 2: drying" })).toBeVisible();
  await expect.element(page.getByText(/Felt dry .*\. Counts from .*: check it again then\./)).toBeVisible();
  const [seen] = await desk.logged("dryness-seen");
  expect(seen?.body).toMatchObject({ method: "touch", verdict: "dry" });
  expect(seen?.at).toBe(deskNow);
});

test("a check that can't be read yet says why, though there is no other", async () => {
  await openPiece(/heron/);
  const row = (await desk.db.projections.toArray()).find(
    (one) => one.kind === "piece" && /heron/.test(one.state.plan.name),
  );
  const coatId = row?.kind === "piece" ? (row.state.coats.at(-1)?.id ?? "") : "";
  const stream = row?.stream as `piece/${string}`;
  const body = { method: "bag", rh: 0.6, roomRh: 0.5, minutes: 5, coatId } as const;
  await desk.shop.log({ do: "log", stream, type: "dryness-seen", body });
  await expect.element(page.getByText(/can't be used: 5.min in the bag; it takes 20.min/)).toBeVisible();
});

test("a struck entry stays to be read, and can be brought back", async () => {
  await openPiece(/heron/);
  const coat = line("Coat 2: prime");
  await coat.getByText("Coat 2: prime").click();
  await coat.getByRole("button", { name: "Delete (kept in history)" }).click();
  await coat.getByRole("textbox").fill("wrong piece");
  await coat.getByRole("button", { name: "Delete it" }).click();
  await expect.element(coat).toHaveTextContent("deleted: wrong piece");
  expect(coat.element().querySelector("s")?.textContent).toContain("Coat 2");
  await expect.element(page.getByText("1 of 8 coats")).toBeVisible();
  await coat.getByRole("button", { name: "Restore it" }).click();
  await expect.element(page.getByText("2 of 8 coats")).toBeVisible();
});

test("a strike without a reason is not taken", async () => {
  await openPiece(/heron/);
  const coat = line("Coat 2: prime");
  await coat.getByText("Coat 2: prime").click();
  await coat.getByRole("button", { name: "Delete (kept in history)" }).click();
  await coat.getByRole("textbox").fill(" ");
  await coat.getByRole("button", { name: "Delete it" }).click({ force: true });
  await expect.element(coat.getByText("Say why, in a word or two.")).toBeVisible();
  expect(await desk.logged("entry-struck")).toEqual([]);
});

test("a corrected time leaves the old line struck and the right one beside it", async () => {
  await openPiece(/heron/);
  const coat = line("Coat 2: prime");
  const before = (await desk.db.entries.toArray()).filter(({ type }) => type === "coat-dipped").length;
  await coat.getByText("Coat 2: prime").click();
  await coat.getByRole("button", { name: "Correct the time" }).click();
  await expect.element(coat.getByText("This is the time it has.")).toBeVisible();
  await coat.getByRole("button", { name: "15 min earlier" }).click();
  await coat.getByRole("button", { name: "Save the time" }).click();
  await expect.element(page.getByText("deleted: time corrected")).toBeVisible();
  const [right] = await desk.logged("coat-dipped");
  const [strike] = await desk.logged("entry-struck");
  const old = (await desk.db.entries.toArray()).find(({ id }) => id === strike?.body.struckId);
  expect(right?.at).toBe((old?.at ?? 0) - 15 * 60_000);
  expect(strike?.body.replacedBy).toBe(right?.id);
  expect((await desk.db.entries.toArray()).filter(({ type }) => type === "coat-dipped").length).toBe(
    before + 1,
  );
});

test("the wall is told in words and as a table as well as drawn", async () => {
  await openPiece(/carp/);
  const wall = page.getByRole("img", { name: /^Shell in section: 5 coats/ });
  await expect.element(wall).toHaveAccessibleName(/\(.* to .*\)\. Handling needs .*Outer coat dry/);
  await page.getByText("As a table").first().click();
  await expect.element(page.getByRole("rowheader", { name: "Needed for handling" })).toBeVisible();
  await expect.element(page.getByRole("cell", { name: "covered while damp" })).toBeVisible();
});

test("a finding leads to the line of the log it rests on", async () => {
  await openPiece(/plaque/);
  const finding = page.getByRole("article", { name: "Shell expected to break in this pour" });
  await finding.getByText("What this rests on").click();
  const link = finding.getByRole("link").first();
  const href = link.element().getAttribute("href") ?? "";
  // The line lies among those that are folded away.
  expect(document.querySelector(href)).toBeNull();
  await link.click();
  await expect.poll(() => document.querySelector(href)?.textContent).toContain("Coat");
  history.replaceState(null, "", location.pathname);
});

test("the log shows its last five lines until all are asked for", async () => {
  await openPiece(/plaque/);
  const log = page.getByRole("region", { name: "Log", exact: true });
  await expect.poll(() => log.getByRole("listitem").elements().length).toBe(5);
  await log.getByRole("button", { name: "All 12 lines" }).click();
  await expect.poll(() => log.getByRole("listitem").elements().length).toBe(12);
});

test("“Log” opens what can be logged over the page, by key too, and Escape closes it", async () => {
  await openPiece(/heron/);
  const key = page.getByRole("button", { name: "Log", exact: true });
  await expect.element(page.getByRole("link", { name: "A coat", exact: true })).not.toBeInTheDocument();
  (key.element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  const asked = page.getByRole("dialog", { name: /^What happened to Demo: heron/ });
  await expect.element(asked.getByRole("link", { name: "A coat", exact: true })).toBeVisible();
  await userEvent.keyboard("{Escape}");
  await expect.element(asked).not.toBeInTheDocument();
  expect(document.activeElement).toBe(key.element());
});

test("a shell that is dry or fired is asked for no touch and no weight", async () => {
  await openPiece(/carp/);
  await expect.element(page.getByRole("heading", { name: "Coat 5: dry" })).toBeVisible();
  await expect.element(page.getByRole("group", { name: "It feels" })).not.toBeInTheDocument();
  await expect.element(page.getByRole("link", { name: "Weigh", exact: true })).not.toBeInTheDocument();
  cleanup();
  await openPiece(/dancer/);
  await expect.element(page.getByText("Preheat for the pour")).toBeVisible();
  await expect.element(page.getByRole("heading", { name: /^Coat \d/ })).not.toBeInTheDocument();
  await expect.element(page.getByRole("group", { name: "It feels" })).not.toBeInTheDocument();
});
