import { cleanup } from "@testing-library/react";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { burning } from "../../../tests/burningDesk.tsx";
import { clearDesks, demoDesk, deskNow, readsDone, showAt, type Desk } from "../../../tests/demoDesk.tsx";
import type { Entry } from "../../logbook/entries/entry.ts";
import { logGroups, type LoggedByHand } from "../base/format/logWords.ts";
import { paths } from "../base/state/paths.ts";
import { Routes } from "./Routes.tsx";

afterEach(clearDesks);

const minute = 60_000;

/** Keys that write. One that names what it takes ("same as last", "with 870 °C") is a tap of its own and no slip. */
const writes =
  /^(log\b|save|coat done|start the run|end the (run|melt)|i put it in|give it up|move|skip this coat|keep this mass|keep it|scrap it)/i;
const names = /same as|as the recipe|as planned|the usual way|as the pour|end the run with/i;
/** Numbers of an entry that nobody measures. */
const counts = new Set(["number", "step"]);

/** The figures in a body, by their keys. */
const figuresOf = (body: unknown, key = ""): readonly string[] =>
  typeof body === "number"
    ? counts.has(key)
      ? []
      : [`${key} ${body}`]
    : typeof body === "object" && body !== null
      ? Object.entries(body).flatMap(([name, value]) => figuresOf(value, name))
      : [];

const lines = async ({ db }: Desk): Promise<readonly Entry[]> => {
  const rows: readonly unknown[] = await db.entries.toArray();
  return rows as readonly Entry[];
};

/** Opens a screen, presses every key that writes, and says which figures are in the log that nobody set. */
async function pressAll(
  desk: Desk,
  path: string,
): Promise<{ readonly pressed: readonly string[]; readonly figures: readonly string[] }> {
  const before = new Set((await lines(desk)).map(({ id }) => id));
  const drafts = await desk.db.drafts.count();
  expect(drafts).toBe(0);
  showAt(desk.shop, path, { route: "*", screen: Routes });
  // Those in folded parts too.
  const keys = () =>
    [...document.querySelectorAll("button")].filter((one) => writes.test(one.textContent ?? ""));
  for (const opening of ["It is poured: end the melt", "End the run…"]) {
    await readsDone(desk.db);
    await expect.element(page.getByRole("heading", { level: 1 })).toBeVisible();
    const open = page.getByRole("button", { name: opening });
    if (open.elements().length > 0) await open.click();
  }
  await expect.poll(() => keys().length).toBeGreaterThan(0);
  const pressed = keys().map(({ textContent }) => textContent ?? "");
  for (const key of keys()) if (!names.test(key.textContent ?? "")) key.click();
  await readsDone(desk.db);
  const written = (await lines(desk)).filter(({ id }) => !before.has(id));
  cleanup();
  return {
    pressed,
    figures: written.flatMap(({ type, body }) => figuresOf(body).map((figure) => `${type}: ${figure}`)),
  };
}

const pieceOf: Partial<Record<LoggedByHand, string>> = {
  "burnout-read": "demo-plaque",
  "burnout-ended": "demo-plaque",
  "shell-fired": "demo-medals",
  "shell-preheated": "demo-medals",
  "metal-poured": "demo-dancer",
  "shell-knocked-out": "demo-bell",
  "outcome-told": "demo-bell",
  "piece-finished": "demo-bell",
  "coat-dipped": "demo-heron",
};

test.each(logGroups.flatMap(({ types }) => [...types]))(
  "%s: untouched, no figure is logged",
  async (type) => {
    const desk = await demoDesk();
    const { figures } = await pressAll(desk, paths.logFor(pieceOf[type] ?? "demo-handle", type));
    expect(figures).toEqual([]);
  },
);

test("how a pour went is asked: untouched it is not logged as full", async () => {
  const desk = await demoDesk();
  await pressAll(desk, paths.logFor("demo-dancer", "metal-poured"));
  expect(await desk.logged("metal-poured")).toEqual([]);
});

const melting = async ({ shop }: Desk): Promise<void> => {
  const stream = "melt/m" as const;
  const items = [{ name: "ingot", massKg: 4, alloyId: "c90300" }];
  const plan = { alloyId: "c90300", pieceIds: [], items, pourC: 1150, furnaceId: "demo-furnace" };
  const done = [
    await shop.log({ do: "log", stream, type: "melt-planned", body: plan, at: deskNow - 60 * minute }),
    await shop.log({
      do: "log",
      stream,
      type: "melt-started",
      body: { hotFurnace: true },
      at: deskNow - 30 * minute,
    }),
  ];
  expect(done.every(({ ok }) => ok)).toBe(true);
};

test.each<readonly [what: string, path: string, before: (desk: Desk) => Promise<unknown>]>([
  ["a weighing", paths.weigh("demo-handle"), async () => undefined],
  ["the air of a room", paths.room("demo-room"), async () => undefined],
  ["the kiln at the start", paths.run("r"), (desk) => burning(desk, { isStarted: false })],
  ["the kiln in a run", paths.run("r"), (desk) => burning(desk)],
  [
    "the end of a run that was read",
    paths.run("r"),
    async (desk) => {
      const { read } = await burning(desk);
      await read(2, 640);
      await read(1, 870);
    },
  ],
  ["metal on the fire, and the end of its melt", paths.melt("m"), melting],
  ["stock", paths.stock, async () => undefined],
  ["a bucket's loss", paths.bucketMakeUp("demo-backup"), async () => undefined],
])("%s: untouched, no figure is logged", async (_, path, before) => {
  const desk = await demoDesk();
  await before(desk);
  const { pressed, figures } = await pressAll(desk, path);
  expect(pressed.length).toBeGreaterThan(0);
  expect(figures).toEqual([]);
});
