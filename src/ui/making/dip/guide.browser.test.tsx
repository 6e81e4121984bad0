import { afterEach, describe, expect, test } from "vitest";
import { passEventMs } from "../../../../tests/eventClock.ts";
import { page } from "vitest/browser";
import {
  choose,
  clearDesk,
  coatsLogged,
  doneOf,
  rack,
  settle,
  show,
  tileOf,
} from "../../../../tests/dipRack.tsx";
import type { Entry } from "../../../logbook/entries/entry.ts";

afterEach(clearDesk);

const tap = (name: string | RegExp) => page.getByRole("button", { name }).click({ delay: 60 });
/** The key takes no second press within 0.7 s: a bouncing glove skips no step. */
async function next(name = "Next"): Promise<void> {
  await tap(name);
  passEventMs(750);
}
const heading = (name: RegExp) => page.getByRole("heading", { level: 1, name });

describe("a guided dip", () => {
  test("off until asked for: a tap on a tile logs at once", async () => {
    const { db, shop } = await rack([{ name: "Heron", coats: 0, lastH: 2 }]);
    show(shop);
    await choose(/^Prime/);
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 1 done");
    expect(await coatsLogged(db)).toHaveLength(1);
  });

  test("step by step: bare wax is looked for, the drain is timed, the coat is logged with the stucco, the rim last", async () => {
    const { db, shop, time } = await rack([{ name: "Heron", coats: 0, lastH: 2 }]);
    show(shop);
    await choose(/^Prime/);
    await tap("Something else");
    await tap(/^Guide me through the dip: no/);
    await expect.element(page.getByRole("button", { name: /^Guide me through the dip: yes/ })).toBeVisible();
    await tap("Back");
    await tileOf("Heron").click();
    await expect.element(heading(/^Heron: Piece ready/)).toBeVisible();
    await next();
    await expect.element(heading(/Bucket ready/)).toBeVisible();
    await next();
    await expect.element(heading(/Dip it slowly/)).toBeVisible();
    await next();
    await next("No bubble, no bare wax");
    await expect.element(heading(/: Drain/)).toBeVisible();
    await tap(/^Draining: 45 s/);
    await expect.element(page.getByRole("timer")).toBeVisible();
    time.now += 46_000;
    await expect.element(page.getByText("Drained. Stucco now.")).toBeVisible();
    expect(await coatsLogged(db)).toHaveLength(0);
    await next();
    await expect.element(heading(/Wait for the stucco/)).toBeVisible();
    await next();
    await expect.element(page.getByText(/^Mask on/)).toBeVisible();
    await next("Stucco is on");
    await expect.element(heading(/wipe the cup rim/)).toBeVisible();
    await settle();
    const [coat] = await coatsLogged(db);
    expect(coat?.body).toMatchObject({ number: 1, kind: "prime", drainS: 45 });
    await next("The rim is clear");
    await tap("Back to the pieces");
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 1 done");
    const rows: readonly unknown[] = await db.entries.toArray();
    const holds = (rows as readonly Entry[]).filter(({ type }) => type === "hold-passed");
    expect(holds.map(({ body }) => body)).toEqual([{ point: "prime-coverage" }, { point: "cup-rim" }]);
  });

  test("a shell with two coats is looked over first", async () => {
    const { shop } = await rack([{ name: "Heron", coats: 2, lastH: 40 }]);
    show(shop);
    await choose(/^(Prime|Intermediate|Backup)/);
    await tap("Something else");
    await tap(/^Guide me through the dip: no/);
    await tap("Back");
    await tileOf("Heron").click();
    await expect.element(heading(/^Heron: Look the shell over/)).toBeVisible();
    await tap("Sound after two coats");
    await expect.element(heading(/Piece ready/)).toBeVisible();
  });
});
