import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import {
  allEntries,
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

describe("put right at the bucket", () => {
  test("undo strikes the last coat and gives the tile back", async () => {
    const { db, shop } = await rack([
      { name: "Heron", coats: 3, lastH: 40 },
      { name: "Spout", coats: 4, lastH: 40 },
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
    await expect.element(page.getByRole("status")).toHaveTextContent(/Coat 4 done.*: Heron/);
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
      .toHaveTextContent("Coat 3 dipped again");
    await toPiece();
    await choose(/^Skip/);
    await expect
      .element(page.getByRole("button", { name: /^Undo/ }))
      .toHaveTextContent("Recipe coat skipped");
    await toPiece();
    await choose(/^Leave it out/);
    await expect.element(doneOf("Heron")).toHaveTextContent("Left out this time");
    await toPiece();
    await choose(/^Damaged/);
    await choose(/^Open crack/);
    await expect.element(page.getByRole("button", { name: /^Undo/ })).toHaveTextContent("Open crack");
    const types = (await allEntries(db)).map(({ type }) => type);
    expect(types).toEqual(expect.arrayContaining(["coat-redipped", "coat-skipped", "crack-found"]));
  });

  test("six pieces in one dip, with one undo and one corrected time, take fewer than 20 taps", async () => {
    const names = ["Heron", "Spout", "Hand", "Fox", "Otter", "Owl"];
    const { db, shop, time } = await rack(names.map((name, i) => ({ name, coats: 3, lastH: 60 - i })));
    show(shop);
    let taps = 0;
    const tap = async (name: RegExp): Promise<void> => {
      taps += 1;
      time.now += 5_000;
      await choose(name);
      await settle();
    };
    await tap(/^Backup/);
    let done = 0;
    while (done < names.length) {
      const waiting = page.getByRole("button", { name: /Coat 4 · backup/ }).elements();
      const [next] = waiting;
      if (next === undefined) {
        await tap(/^Next pieces/);
        continue;
      }
      const name = names.find((one) => next.textContent?.startsWith(one)) ?? "";
      await tap(new RegExp(`^${name}`));
      await expect.element(doneOf(name)).toHaveTextContent("Coat 4 done");
      if (done === 2) {
        await tap(/^Undo/);
        await tap(new RegExp(`^${name}`));
        await expect.element(doneOf(name)).toHaveTextContent("Coat 4 done");
        time.now += 5_000;
        await tap(new RegExp(`^Change the time of ${name}`));
        await tap(/^15 min earlier/);
        await tap(/^1 h earlier/);
        await tap(/^Set today/);
      }
      done += 1;
    }
    expect(taps).toBeLessThan(20);
    const all = await coatsLogged(db);
    const struck = new Set(
      (await allEntries(db)).flatMap((entry) => (entry.type === "entry-struck" ? [entry.body.struckId] : [])),
    );
    const kept = all.filter(({ id }) => !struck.has(id));
    expect(kept).toHaveLength(6);
    expect(new Set(kept.map(({ body }) => body.dipId)).size).toBe(1);
    expect(kept.filter(({ at }) => at < now - 3_600_000)).toHaveLength(1);
  });
});
