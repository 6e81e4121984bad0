import { cleanup } from "@testing-library/react";
import { afterEach, describe, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import {
  anotherTab,
  choose,
  clearDesk,
  coatsLogged,
  doneOf,
  now,
  rack,
  settle,
  show,
  tileOf,
} from "../../../../tests/dipRack.tsx";

afterEach(clearDesk);

describe("at the bucket", () => {
  test("what the rack wants next is offered with how many pieces it would serve", async () => {
    const { shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Spout", coats: 4, lastH: 40 },
      { name: "Hand", coats: 4, lastH: 1 },
      { name: "Otter", coats: 0, lastH: 2 },
    ]);
    show(shop);
    await expect
      .element(page.getByRole("button", { name: /^Backup.*2 pieces ready, 1 still drying/ }))
      .toBeVisible();
    await expect.element(page.getByRole("button", { name: /^Prime.*1 piece ready/ })).toBeVisible();
  });

  test("a tap logs this piece's coat with its own time, and the tile says so where it was", async () => {
    const { db, shop, time } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Spout", coats: 4, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    time.now += 90_000;
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
    time.now += 90_000;
    await tileOf("Spout").click();
    await expect.element(doneOf("Spout")).toHaveTextContent("Coat 5 done");
    const coats = await coatsLogged(db);
    expect(coats.map(({ at, body }) => [at - now, body.number, body.step, body.kind, body.stuccoId])).toEqual(
      expect.arrayContaining([
        [90_000, 4, 3, "backup", "16-30"],
        [180_000, 5, 4, "backup", "16-30"],
      ]),
    );
    expect(new Set(coats.map(({ body }) => body.dipId)).size).toBe(1);
    expect(coats.every(({ body }) => body.acceptedDamp === undefined)).toBe(true);
    const names = page
      .getByRole("group")
      .elements()
      .map((group) => group.getAttribute("aria-label"));
    expect(names).toEqual(["Heron", "Spout"]);
  });

  test("two quick taps are one coat", async () => {
    const { db, shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    show(shop);
    await choose(/^Backup/);
    const tile = tileOf("Heron");
    await tile.dblClick();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
    await settle();
    expect(await coatsLogged(db)).toHaveLength(1);
    await expect.element(page.getByText("Heron: when?")).not.toBeInTheDocument();
  });

  test("two tabs tapping the same coat write it once, and both show it", async () => {
    const { db, shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    show(shop);
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
    show(anotherTab(shop));
    await expect.element(tileOf("Heron").nth(1)).toBeVisible();
    const [one, two] = tileOf("Heron").elements();
    if (!(one instanceof HTMLElement) || !(two instanceof HTMLElement)) throw new Error("two tiles expected");
    one.click();
    two.click();
    await expect.element(doneOf("Heron").nth(1)).toHaveTextContent("Coat 4 done");
    await expect.element(doneOf("Heron").nth(0)).toHaveTextContent("Coat 4 done");
    await expect.element(doneOf("Heron").filter({ hasText: /already/ })).toBeVisible();
    expect((await coatsLogged(db)).map(({ body }) => body.number)).toEqual([4]);
  });

  test("a coat that is not dry is said to be so before the tap, and accepted with it", async () => {
    const { db, shop } = await rack([{ name: "Hand", coats: 4, lastH: 1 }]);
    show(shop);
    await choose(/^Backup/);
    await expect
      .element(tileOf("Hand"))
      .toHaveTextContent(/Drying: check by touch from .*Coat 4 NOT DRY – about \d+\s% of its water left/);
    await tileOf("Hand").click();
    await expect.element(doneOf("Hand")).toHaveTextContent("Coat 5 done");
    const [coat] = await coatsLogged(db);
    expect(coat?.body.acceptedDamp?.leftShare).toBeGreaterThan(0.05);
    expect(coat?.body.acceptedDamp?.coatId).toBeTruthy();
  });

  test("what the tile says of the coat beneath is in the new coat's own line, written by the tap in one transaction", async () => {
    // Before the store opens, which keeps what it then finds.
    const begun = vi.spyOn(IDBDatabase.prototype, "transaction");
    const { db, shop } = await rack([{ name: "Hand", coats: 4, lastH: 1 }]);
    show(shop);
    await choose(/^Backup/);
    const shown = /about (\d+)\s%/.exec(tileOf("Hand").element().textContent ?? "")?.[1];
    const before = begun.mock.calls.length;
    await tileOf("Hand").click();
    await expect.element(doneOf("Hand")).toHaveTextContent("Coat 5 done");
    const writes = begun.mock.calls
      .slice(before)
      .filter(
        ([stores, mode]) =>
          mode === "readwrite" && (typeof stores === "string" ? [stores] : [...stores]).includes("entries"),
      );
    begun.mockRestore();
    expect(writes).toHaveLength(1);
    const [coat] = await coatsLogged(db);
    const said = coat?.body.said;
    expect(said).toMatchObject({ coatId: coat?.body.acceptedDamp?.coatId, cover: "drying", dryness: "wet" });
    expect(said?.leftShare).toBe(coat?.body.acceptedDamp?.leftShare);
    expect(Math.round(100 * (said?.leftShare ?? 0))).toBe(Number(shown));
    const row = await db.projections.get(coat?.stream ?? "");
    expect(row?.kind === "piece" ? row.state.coats.at(-1)?.said : null).toEqual(said);
  });

  test("a first coat keeps nothing: there is no coat beneath it to speak of", async () => {
    const { db, shop } = await rack([{ name: "Otter", coats: 0, lastH: 2 }]);
    show(shop);
    await choose(/^Prime/);
    await tileOf("Otter").click();
    await expect.element(doneOf("Otter")).toHaveTextContent("Coat 1 done");
    expect((await coatsLogged(db))[0]?.body.said).toBeUndefined();
  });

  test("a hold on a wet recoat is asked before the next coat: the first tap logs nothing", async () => {
    const { db, shop, time } = await rack([{ name: "Hand", coats: 4, lastH: 1 }]);
    show(shop);
    await choose(/^Backup/);
    await tileOf("Hand").click();
    await expect.element(doneOf("Hand")).toHaveTextContent("Coat 5 done");
    cleanup();
    // By then the visit is over, and the next one begins.
    time.now += 5 * 60_000;
    show(shop);
    await choose(/^Backup/);
    await expect
      .element(tileOf("Hand"))
      .toHaveTextContent(/Hold: Coat 4 was damp when you dipped coat 5\. Asks first\./);
    await tileOf("Hand").click();
    await expect.element(page.getByRole("heading", { name: "Hand: coat 6?" })).toBeVisible();
    expect(await coatsLogged(db)).toHaveLength(1);
    await page.getByRole("button", { name: /^Dip it anyway/ }).click();
    await expect.element(doneOf("Hand")).toHaveTextContent("Coat 6 done");
    expect(await coatsLogged(db)).toHaveLength(2);
  });

  test("a piece whose recipe wants another kind comes last and says so", async () => {
    const { db, shop } = await rack([
      { name: "Otter", coats: 1, lastH: 60 },
      { name: "Heron", coats: 3, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    await expect.element(tileOf("Otter")).toHaveTextContent("Recipe: prime");
    const names = page
      .getByRole("button", { name: /^(Otter|Heron)/ })
      .elements()
      .map((tile) => tile.textContent?.slice(0, 5));
    expect(names).toEqual(["Heron", "Otter"]);
    await tileOf("Otter").click();
    await expect.element(doneOf("Otter")).toHaveTextContent("Coat 2 done");
    expect((await coatsLogged(db)).at(-1)?.body).toMatchObject({
      step: null,
      kind: "backup",
      stuccoId: "16-30",
    });
  });

  test("Space gives the first waiting piece its coat, a bouncing switch only once", async () => {
    const { db, shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Spout", coats: 4, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
    await userEvent.keyboard(" ");
    await userEvent.keyboard(" ");
    await expect.element(doneOf("Heron")).toHaveTextContent("done");
    await settle();
    expect(await coatsLogged(db)).toHaveLength(1);
    await userEvent.keyboard("{Enter}");
    await expect.element(doneOf("Spout")).toHaveTextContent("done");
  });

  test("a reload finds the visit as it was", async () => {
    const { db, shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Spout", coats: 4, lastH: 40 },
    ]);
    const before = show(shop);
    await choose(/^Backup/);
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("done");
    await settle();
    before.unmount();
    show(shop);
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toBeVisible();
    await tileOf("Spout").click();
    await expect.element(doneOf("Spout")).toHaveTextContent("done");
    expect(new Set((await coatsLogged(db)).map(({ body }) => body.dipId)).size).toBe(1);
  });

  test("at most four keys are on the screen, each high enough and clear of the edge", async () => {
    await page.viewport(390, 844);
    const { shop } = await rack(
      ["Heron", "Spout", "Hand", "Fox", "Otter"].map((name, i) => ({ name, coats: 3, lastH: 40 + i })),
    );
    show(shop);
    await choose(/^Backup/);
    await page
      .getByRole("button", { name: /Coat 4 · / })
      .first()
      .click();
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toBeVisible();
    const keys = page
      .getByRole("button")
      .elements()
      .filter((key) => key.textContent !== "Something else" && key.textContent !== "Done dipping");
    expect(keys.length).toBeLessThanOrEqual(4);
    const boxes = keys.map((key) => key.getBoundingClientRect());
    for (const box of boxes) {
      expect(box.height).toBeGreaterThanOrEqual(72);
      expect(box.left).toBeGreaterThanOrEqual(24);
      expect(box.right).toBeLessThanOrEqual(390 - 24);
    }
    const waiting = page
      .getByRole("button", { name: /Coat 4 · / })
      .element()
      .getBoundingClientRect();
    expect(waiting.height).toBeGreaterThanOrEqual(120);
  });
});
