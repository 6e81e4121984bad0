import { afterEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { makeRescuePage, type RescueActions } from "./rescuePage.ts";
import { watchOpening } from "./watchOpening.ts";

const nothing = (): Promise<null> => Promise.resolve(null);
const actions = (own: Partial<RescueActions> = {}): RescueActions => ({
  "try-again": nothing,
  "save-backup": nothing,
  "remake-summaries": nothing,
  "look-for-update": nothing,
  ...own,
});
const names = () => [...document.querySelectorAll(".rescue button")].map(({ textContent }) => textContent);

afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

test("what happened stands in words with the keys that help, and goes away without a trace", async () => {
  const rescue = makeRescuePage(document.body, actions());
  rescue.show({ kind: "app-failed", detail: "a sum threw" });
  await expect.element(page.getByRole("heading", { name: "Dipbook could not be shown" })).toBeVisible();
  await expect.element(page.getByText("a sum threw")).toBeVisible();
  expect(names()).toEqual(["Try again", "Rebuild the summaries", "Save a backup", "Look for an update"]);
  rescue.hide();
  expect(document.querySelector(".rescue")).toBeNull();
});

test("what a key comes to is said, and a key that fails says why", async () => {
  const rescue = makeRescuePage(
    document.body,
    actions({
      "save-backup": () => Promise.resolve("Backup made: 12 entries, 1 photo. See that it arrived."),
      "look-for-update": () => Promise.reject(new Error("no network")),
    }),
  );
  rescue.show({ kind: "store-failed", detail: "broken" });
  await page.getByRole("button", { name: "Save a backup" }).click();
  await expect.element(page.getByRole("status")).toHaveTextContent("Backup made: 12 entries, 1 photo.");
  await page.getByRole("button", { name: "Look for an update" }).click();
  await expect.element(page.getByRole("status")).toHaveTextContent("That did not work. no network");
});

test("an upgrade shows how far it is, with nothing to press", async () => {
  const rescue = makeRescuePage(document.body, actions());
  const opening = watchOpening(rescue);
  opening.upgrading(40, 213);
  await expect.element(page.getByText("40 of 213 pieces, rooms and runs.")).toBeVisible();
  opening.upgrading(41, 213);
  await expect.element(page.getByText("41 of 213 pieces, rooms and runs.")).toBeVisible();
  expect(names()).toEqual([]);
  opening.opened();
  expect(document.querySelector(".rescue")).toBeNull();
});

test("a version that waits is offered first", () => {
  const rescue = makeRescuePage(document.body, actions());
  rescue.show({ kind: "newer-store", found: 9, known: 2 });
  const take = vi.fn();
  rescue.offerVersion(take);
  expect(names()[0]).toBe("Use the new version");
  document.querySelector<HTMLButtonElement>(".rescue button")?.click();
  expect(take).toHaveBeenCalledOnce();
});

test("no answer is said after the wait and not before, and not while an upgrade runs", () => {
  vi.useFakeTimers();
  const said = { show: vi.fn(), hide: vi.fn() };
  watchOpening(said, { slowMs: 5000 });
  vi.advanceTimersByTime(4999);
  expect(said.show).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(said.show).toHaveBeenCalledWith({ kind: "no-answer", afterS: 5 });

  const busy = { show: vi.fn(), hide: vi.fn() };
  const opening = watchOpening(busy, { slowMs: 5000 });
  opening.upgrading(1, 9);
  vi.advanceTimersByTime(60_000);
  expect(busy.show).toHaveBeenCalledTimes(1);
});

test("a store that failed and opens at a later try takes the page away", async () => {
  const rescue = makeRescuePage(document.body, actions());
  const opening = watchOpening(rescue);
  opening.failed(new DOMException("held by another", "UnknownError"));
  await expect.element(page.getByRole("heading", { name: "The log could not be opened" })).toBeVisible();
  opening.opened();
  expect(document.querySelector(".rescue")).toBeNull();
});

test("once it has opened nothing that comes late is shown", () => {
  const said = { show: vi.fn(), hide: vi.fn() };
  const opening = watchOpening(said);
  opening.opened();
  opening.blocked();
  expect(said.show).not.toHaveBeenCalled();
  expect(said.hide).toHaveBeenCalledOnce();
});
