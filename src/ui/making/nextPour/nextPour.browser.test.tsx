import { cleanup } from "@testing-library/react";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, deskNow, freshDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { streamOf, shopStream, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { startingRecipeOf } from "../../../trade/startingRecipes.ts";
import { localText } from "../../base/parts/localTime.ts";
import { paths } from "../../base/state/paths.ts";
import { MeltPlanPage } from "../../fire/metal/MeltPlanPage.tsx";
import { PourPlanPage } from "../../fire/pour/PourPlanPage.tsx";
import { RunPlanPage } from "../../fire/run/RunPlanPage.tsx";
import { NextPourPage } from "./NextPourPage.tsx";

afterEach(clearDesks);

type Shop = Pick<Desk, "db" | "shop">;

const show = ({ shop }: Shop) => showAt(shop, "/next-pour", { route: "/next-pour", screen: NextPourPage });
const region = (name: string | RegExp) => page.getByRole("region", { name });

async function log<T extends EntryType>(
  { shop }: Shop,
  stream: string,
  type: T,
  body: EntryBodies[T],
  at = deskNow,
): Promise<void> {
  const command = { do: "log", stream, type, body, at } as Parameters<typeof shop.log>[0];
  expect(await shop.log(command)).toMatchObject({ ok: true });
}

/** A room read for two days, a kiln and a furnace with its crucible. */
async function setUp(desk: Shop): Promise<void> {
  for (let h = 48; h >= 0; h -= 6)
    await log(
      desk,
      streamOf("room", "first"),
      "air-read",
      { airC: 21, rh: 0.45, air: "room-fan" },
      deskNow - h * hourMs,
    );
  await log(desk, shopStream, "kiln-set", {
    kilnId: "kiln",
    name: "Big kiln",
    heat: "electric",
    powerKW: 9,
    volumeL: 120,
    maxC: 1200,
    retired: false,
  });
  await log(desk, shopStream, "furnace-set", {
    furnaceId: "furnace",
    name: "Gas furnace",
    heat: "propane",
    powerKW: 30,
    crucibleL: 1.8,
    retired: false,
  });
}

const known: Partial<PiecePlan> = {
  recipeId: "start-general",
  material: "wax",
  alloyId: "c87300",
  metalLitre: 0.25,
  areaM2: 0.08,
};

async function piece(desk: Shop, name: string, { coats = 0, plan = known } = {}): Promise<void> {
  const stream = streamOf("piece", name.toLowerCase().replaceAll(" ", "-"));
  const startAt = deskNow - (coats + 1) * 24 * hourMs;
  await log(desk, stream, "piece-started", { plan: { name, ...plan }, roomId: "first" }, startAt);
  for (const [step, coat] of (startingRecipeOf("start-general")?.coats ?? []).slice(0, coats).entries())
    await log(
      desk,
      stream,
      "coat-dipped",
      {
        number: step + 1,
        step,
        kind: coat.kind,
        stuccoId: coat.stuccoId,
        bucketId: coat.kind === "prime" ? "first-prime" : "first-backup",
        roomId: "first",
        prewet: false,
      },
      startAt + (step + 0.5) * 24 * hourMs,
    );
}

const entriesOf = ({ db }: Shop): Promise<number> => db.entries.count();

test("an empty shop is told that nothing waits, and a day can be set all the same", async () => {
  show(freshDesk());
  await expect.element(page.getByRole("heading", { name: "No piece is waiting for metal" })).toBeVisible();
  await expect.element(page.getByLabelText("Pour time")).toBeVisible();
});

test("a usual rack: what is missing first, then a melt, its kiln, what to do first and why the rest stays", async () => {
  const desk = freshDesk();
  await setUp(desk);
  await piece(desk, "Heron", { coats: 6 });
  await piece(desk, "Otter", { coats: 2 });
  await piece(desk, "Nameless", { plan: { recipeId: "start-general" } });
  await piece(desk, "Giant", { coats: 6, plan: { ...known, metalLitre: 9 } });
  await piece(desk, "Bell", { coats: 6, plan: { ...known, alloyId: "a356" } });
  const before = await entriesOf(desk);
  show(desk);
  const melt = region(/^Melt of C87300/);
  await expect.element(melt).toHaveTextContent(/In Gas furnace, for 2 pieces/);
  await expect.element(melt).toHaveTextContent(/Heron, 2\.09 kg/);
  const key = melt.getByRole("link", { name: "Open the melt plan with these" });
  await expect.element(key).toHaveAttribute("href", "/fire/melt/new?piece=heron&piece=otter&furnace=furnace");
  await expect.element(region("Needed first")).toHaveTextContent(/Nameless.*No alloy is set/);
  const kiln = region("Big kiln");
  await expect.element(kiln).toHaveTextContent(/Burnout, .*: start by .*Preheat, /);
  await expect.element(kiln).toHaveTextContent(/Space used\s*not known/);
  const first = region("Do first").getByRole("listitem");
  // Otter has more coats to come, so less time to spare.
  await expect.element(first.first()).toHaveTextContent(/Otter.*Coat 3: intermediate.*, on by/);
  await first
    .first()
    .getByText(/^All \d coats to come/)
    .click();
  await expect.element(first.first().getByRole("columnheader", { name: "Cautious time" })).toBeVisible();
  const left = region("Not on that day");
  await expect
    .element(left)
    .toHaveTextContent(/Giant.*It needs .* kg molten; the largest crucible takes 9\.99 kg/);
  await expect.element(left).toHaveTextContent(/Bell.*One melt, one alloy.*C87300/);
  await expect.element(page.getByText(/The shell review and the pour sheet decide/)).toBeVisible();
  expect(await entriesOf(desk)).toBe(before);
});

test("the plans open with the pieces of the address, the crucible and the hour, and write nothing", async () => {
  const desk = freshDesk();
  await setUp(desk);
  await log(desk, shopStream, "furnace-set", {
    furnaceId: "second",
    name: "Second furnace",
    heat: "propane",
    powerKW: 20,
    crucibleL: 1,
    retired: false,
  });
  for (const name of ["Heron", "Otter"]) await piece(desk, name, { coats: 9 });
  const reviewed = streamOf("piece", "heron");
  await log(desk, reviewed, "shell-fired", { peakC: 900, holdMin: 60, inside: "clean" });
  await piece(desk, "Bell", { coats: 9 });
  const before = await entriesOf(desk);
  const { shop } = desk;
  const isTicked = (name: string) => expect.element(page.getByRole("checkbox", { name }));

  showAt(shop, paths.newMeltOf(["heron", "otter"], "second"), { route: paths.newMelt, screen: MeltPlanPage });
  await isTicked("Heron").toBeChecked();
  await isTicked("Otter").toBeChecked();
  await isTicked("Bell").not.toBeChecked();
  await expect.element(page.getByLabelText("Furnace")).toHaveValue("second");
  cleanup();

  showAt(shop, paths.newRunOf(["otter", "bell"], "burnout"), { route: paths.newRun, screen: RunPlanPage });
  await isTicked("Otter").toBeChecked();
  await isTicked("Bell").toBeChecked();
  cleanup();

  const pourAt = deskNow + 50 * hourMs;
  showAt(shop, paths.newPourOf(["heron"], pourAt), { route: paths.newPour, screen: PourPlanPage });
  await isTicked("Heron").toBeChecked();
  await expect.element(page.getByLabelText("Day and time")).toHaveValue(localText(pourAt));
  expect(await entriesOf(desk)).toBe(before);
});

test("too soon a day: every piece says by how much, and when it could go; the day is kept as a draft alone", async () => {
  const desk = freshDesk();
  await setUp(desk);
  await piece(desk, "Heron", { coats: 6 });
  const before = await entriesOf(desk);
  show(desk);
  await expect.element(region(/^Melt of/)).toBeVisible();
  await page.getByLabelText("Pour time").fill("2026-03-05T18:00");
  await expect.element(region("No pour possible on that day")).toBeVisible();
  await expect
    .element(region("Not on that day"))
    .toHaveTextContent(/Heron.*too late.*First possible pour time: /);
  expect(await entriesOf(desk)).toBe(before);
  await expect.poll(() => desk.db.drafts.count()).toBe(1);
});

test("forty pieces: never over the crucible, each piece somewhere, and the page says it took them one by one", async () => {
  const desk = freshDesk();
  await setUp(desk);
  for (let i = 0; i < 40; i++)
    await piece(desk, `Medal ${i}`, { coats: i % 4, plan: { ...known, metalLitre: 0.05 + (i % 5) * 0.04 } });
  show(desk);
  const melt = region(/^Melt of C87300/);
  await expect.element(melt, { timeout: 60_000 }).toBeVisible();
  const going = region("Do first").getByRole("listitem").elements().length;
  const left = region("Not on that day").getByRole("listitem").elements().length;
  expect(going + left).toBe(40);
  expect(going).toBeGreaterThan(10);
  await expect.element(region("Not on that day")).toHaveTextContent(/Gas furnace has .* kg left/);
  await page.getByText("How this is calculated").click();
  await expect.element(page.getByText(/More than 12 pieces could go/)).toBeVisible();
});
