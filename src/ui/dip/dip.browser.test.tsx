import { cleanup, render } from "@testing-library/react";
import { afterEach, describe, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { v7 } from "uuid";
import type { Command } from "../../logbook/command.ts";
import { type Entry, type EntryOf, streamOf } from "../../logbook/entry.ts";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { readStream } from "../../storage/streams.ts";
import { runCommand } from "../../storage/run.ts";
import { readSettings } from "../../storage/settings.ts";
import { openShopDb, type ShopDb } from "../../storage/shopDb.ts";
import { makeShop, ShopProvider } from "../app/shop.tsx";
import "../styles/base.css";
import "../styles/tokens.css";
import { DipPage } from "./DipPage.tsx";

const hourMs = 3_600_000;
const now = Date.parse("2026-03-04T14:02:00Z");
let opened: ShopDb[] = [];

afterEach(async () => {
  cleanup();
  for (const db of opened) await db.delete();
  opened = [];
});

const moment = (at: number) => ({ now: at, zone: "UTC", device: "test", newId: () => v7() });

async function does(db: ShopDb, command: Command, at: number): Promise<void> {
  const result = await runCommand(db, command, moment(at));
  expect(result).toMatchObject({ ok: true });
}

/** A rack of pieces on the general recipe, each with `coats` coats, the last one `lastH` hours old. */
async function rack(pieces: readonly { name: string; coats: number; lastH: number }[]) {
  const db = openShopDb(`dip-${v7()}`);
  opened.push(db);
  const air = { airC: 21, rh: 0.5, air: "room-fan" } as const;
  await does(
    db,
    { do: "log", stream: streamOf("room", "first"), type: "air-read", body: air, at: now - 300 * hourMs },
    now,
  );
  await does(
    db,
    { do: "log", stream: streamOf("room", "first"), type: "air-read", body: air, at: now - hourMs },
    now,
  );
  const recipe = startingRecipeOf("start-general");
  for (const { name, coats, lastH } of pieces) {
    const stream = streamOf("piece", v7());
    const startAt = now - (coats * 24 + lastH + 1) * hourMs;
    const plan = { name, recipeId: "start-general" };
    await does(
      db,
      { do: "log", stream, type: "piece-started", body: { plan, roomId: "first" }, at: startAt },
      now,
    );
    for (let step = 0; step < coats; step++) {
      const coat = recipe?.coats[step];
      if (coat === undefined) throw new Error("the recipe is shorter than the test");
      const body = {
        number: step + 1,
        step,
        kind: coat.kind,
        stuccoId: coat.stuccoId,
        bucketId: coat.kind === "prime" ? "first-prime" : "first-backup",
        roomId: "first",
        prewet: false,
      };
      await does(
        db,
        {
          do: "log",
          stream,
          type: "coat-dipped",
          body,
          at: now - ((coats - 1 - step) * 24 + lastH) * hourMs,
        },
        now,
      );
    }
  }
  const time = { now };
  const shop = makeShop({ db, clock: () => time.now, newId: () => v7(), opened: await readSettings(db) });
  return { db, shop, time };
}

const show = (shop: ReturnType<typeof makeShop>) =>
  render(
    <ShopProvider shop={shop}>
      <DipPage />
    </ShopProvider>,
  );

/** The coats tapped at the bucket, as against those the rack came with. */
const coatsLogged = async (db: ShopDb): Promise<readonly EntryOf<"coat-dipped">[]> =>
  (await allEntries(db)).filter(
    (entry): entry is EntryOf<"coat-dipped"> =>
      entry.type === "coat-dipped" && "dipId" in entry.body && entry.body.dipId !== undefined,
  );

async function allEntries(db: ShopDb): Promise<readonly Entry[]> {
  const streams = new Set((await db.entries.toArray()).map(({ stream }) => stream));
  const read = await Promise.all([...streams].map((stream) => readStream(db, stream)));
  return read.flatMap(({ entries }) => entries);
}

const tileOf = (name: string) => page.getByRole("button", { name: new RegExp(`^${name}`) });
const doneOf = (name: string) => page.getByRole("group", { name });
const choose = (name: RegExp) => page.getByRole("button", { name }).click();

/** Keys come up where fingers were; a maker takes longer than this too. */
const settle = () => new Promise((resolve) => setTimeout(resolve, 750));

describe("at the bucket", () => {
  test("what the rack wants next is offered with how many pieces it would serve", async () => {
    const { shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Bust", coats: 4, lastH: 40 },
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
      { name: "Bust", coats: 4, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    time.now += 90_000;
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
    time.now += 90_000;
    await tileOf("Bust").click();
    await expect.element(doneOf("Bust")).toHaveTextContent("Coat 5 done");
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
    expect(names).toEqual(["Heron", "Bust"]);
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
    const first = show(shop);
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
    const elsewhere = openShopDb(db.name);
    opened.push(elsewhere);
    const second = show({
      ...shop,
      ...makeShop({ db: elsewhere, clock: () => now, newId: () => v7(), opened: shop.opened }),
    });
    await expect.element(tileOf("Heron").nth(1)).toBeVisible();
    const [one, two] = tileOf("Heron").elements();
    if (!(one instanceof HTMLElement) || !(two instanceof HTMLElement)) throw new Error("two tiles expected");
    one.click();
    two.click();
    await expect.element(doneOf("Heron").nth(1)).toHaveTextContent("Coat 4 done");
    await expect.element(doneOf("Heron").nth(0)).toHaveTextContent("Coat 4 done");
    await expect.element(doneOf("Heron").filter({ hasText: /already/ })).toBeVisible();
    expect((await coatsLogged(db)).map(({ body }) => body.number)).toEqual([4]);
    first.unmount();
    second.unmount();
  });

  test("a coat that is not dry is said to be so before the tap, and accepted with it", async () => {
    const { db, shop } = await rack([{ name: "Hand", coats: 4, lastH: 1 }]);
    show(shop);
    await choose(/^Backup/);
    await expect
      .element(tileOf("Hand"))
      .toHaveTextContent(/Coat 4 NOT DRY – about \d+ % of the water still in; ready likely/);
    await tileOf("Hand").click();
    await expect.element(doneOf("Hand")).toHaveTextContent("Coat 5 done");
    const [coat] = await coatsLogged(db);
    expect(coat?.body.acceptedDamp?.leftShare).toBeGreaterThan(0.05);
    expect(coat?.body.acceptedDamp?.coatId).toBeTruthy();
  });

  test("undo strikes the last coat and gives the tile back", async () => {
    const { db, shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Bust", coats: 4, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("done");
    await choose(/^Undo/);
    await expect.element(tileOf("Heron")).toHaveTextContent("Coat 4 · backup · 16–30");
    await expect.element(page.getByRole("button", { name: /^Undo/ })).not.toBeInTheDocument();
    const struck = (await allEntries(db)).filter((entry) => entry.type === "entry-struck");
    expect(struck).toMatchObject([{ body: { reason: "undo" } }]);
    await settle();
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
  });

  test("I did this at six: the time is put right, and undo puts it back", async () => {
    const { db, shop, time } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    show(shop);
    await choose(/^Backup/);
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("done");
    time.now += 5_000;
    await page.getByRole("button", { name: "Change the time of Heron" }).click();
    await choose(/^15 min earlier/);
    await choose(/^1 h earlier/);
    await choose(/^Set today/);
    await expect.element(page.getByRole("status")).toHaveTextContent(/Heron: Coat 4 done/);
    const standing = (await allEntries(db)).filter(
      (entry) => entry.type === "coat-dipped" && entry.body.number === 4,
    );
    expect(standing.map(({ at }) => at)).toContain(Date.parse("2026-03-04T13:00:00Z"));
    await settle();
    await choose(/^Undo/);
    await expect.element(page.getByRole("status")).toHaveTextContent(/^Undone/);
    const after = (await allEntries(db)).filter(
      (entry) => entry.type === "coat-dipped" && entry.body.number === 4,
    );
    expect(after.at(-1)?.at).toBe(now);
  });

  test("a piece whose recipe wants another kind comes last and says so", async () => {
    const { db, shop } = await rack([
      { name: "Otter", coats: 1, lastH: 60 },
      { name: "Heron", coats: 3, lastH: 40 },
    ]);
    show(shop);
    await choose(/^Backup/);
    await expect.element(tileOf("Otter")).toHaveTextContent("Recipe wants prime");
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
      { name: "Bust", coats: 4, lastH: 40 },
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
    await expect.element(doneOf("Bust")).toHaveTextContent("done");
  });

  test("a reload finds the visit as it was", async () => {
    const { db, shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Bust", coats: 4, lastH: 40 },
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
    await tileOf("Bust").click();
    await expect.element(doneOf("Bust")).toHaveTextContent("done");
    expect(new Set((await coatsLogged(db)).map(({ body }) => body.dipId)).size).toBe(1);
  });

  test("skip, leave out, dipped again and damaged are each two or three taps from the tiles", async () => {
    const { db, shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    show(shop);
    await choose(/^Backup/);
    const toPiece = async (): Promise<void> => {
      await choose(/^Something else/);
      await choose(/^One piece is different/);
      await choose(/^Heron/);
    };
    await toPiece();
    await choose(/^Dipped again/);
    await expect
      .element(page.getByRole("button", { name: /^Undo/ }))
      .toHaveTextContent("coat 3 dipped again");
    await toPiece();
    await choose(/^Skip/);
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toHaveTextContent("skipped");
    await toPiece();
    await choose(/^Leave it out/);
    await expect.element(doneOf("Heron")).toHaveTextContent("Left out this time");
    await toPiece();
    await choose(/^Damaged/);
    await choose(/^Open crack/);
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toHaveTextContent("open crack");
    const types = (await allEntries(db)).map(({ type }) => type);
    expect(types).toEqual(expect.arrayContaining(["coat-redipped", "coat-skipped", "crack-found"]));
  });

  test("at most four keys are on the screen, each high enough and clear of the edge", async () => {
    await page.viewport(390, 844);
    const { shop } = await rack(
      ["Heron", "Bust", "Hand", "Fox", "Otter"].map((name, i) => ({ name, coats: 3, lastH: 40 + i })),
    );
    show(shop);
    await choose(/^Backup/);
    await page
      .getByRole("button", { name: /Coat 4/ })
      .first()
      .click();
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toBeVisible();
    const keys = page
      .getByRole("button")
      .elements()
      .filter((key) => key.textContent !== "Something else");
    expect(keys.length).toBeLessThanOrEqual(4);
    const boxes = keys.map((key) => key.getBoundingClientRect());
    for (const box of boxes) {
      expect(box.height).toBeGreaterThanOrEqual(72);
      expect(box.left).toBeGreaterThanOrEqual(24);
      expect(box.right).toBeLessThanOrEqual(390 - 24);
    }
    const waiting = page
      .getByRole("button", { name: /Coat 4/ })
      .element()
      .getBoundingClientRect();
    expect(waiting.height).toBeGreaterThanOrEqual(120);
  });
});
