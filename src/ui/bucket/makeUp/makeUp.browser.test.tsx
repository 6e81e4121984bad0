import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import type { EntryBodies, EntryType } from "../../../logbook/entries/entry.ts";
import { BucketPage } from "../buckets/BucketPage.tsx";
import { MakeUpPage } from "./MakeUpPage.tsx";

afterEach(clearDesks);

const id = "first-prime";
const at = { route: "/buckets/:id/make-up", screen: MakeUpPage };
const path = `/buckets/${id}/make-up`;
const aims: EntryBodies["bucket-set"] = {
  name: "Prime",
  use: "prime",
  slurry: "",
  flourId: "fused-silica",
  ratio: 1.7,
  cupId: "zahn-4",
  lowS: 18,
  highS: 26,
  slurryC: 22,
  fullL: 20,
};

async function bucket(
  ...log: readonly (readonly [hoursAgo: number, type: EntryType, body: object])[]
): Promise<Desk> {
  const desk = await demoDesk();
  const lines = [[100, "bucket-set", aims], [99, "bucket-mixed", mix], ...log] as const;
  for (const [hoursAgo, type, body] of lines) {
    const done = await desk.shop.log({
      do: "log",
      stream: `bucket/${id}`,
      type: type as "bucket-set",
      body: body as EntryBodies["bucket-set"],
      at: deskNow - hoursAgo * hourMs,
    });
    expect(done).toMatchObject({ ok: true });
  }
  return desk;
}
const mix: EntryBodies["bucket-mixed"] = { flourKg: 21.17, solKg: 12.453, waterKg: 0, litre: 20 };
const dryReading = { cupId: "zahn-4", cupS: 31, slurryC: 22, densityGCm3: 1.717 };
const key = (name: string | RegExp) => page.getByRole("button", { name });
const tap = (name: string | RegExp) => key(name).click({ delay: 60 });

/** The main key ends above the fold, and the word of the dust above the key: on a phone, and on one with browser bars. */
async function expectWholeKey(): Promise<void> {
  for (const height of [844, 640]) {
    await page.viewport(390, height);
    const main = key("Log it as added").element().getBoundingClientRect();
    const dust = page
      .getByText(/^Dry flour: mask on/)
      .element()
      .getBoundingClientRect();
    expect(main.bottom).toBeLessThanOrEqual(height);
    expect(main.height).toBeGreaterThanOrEqual(120);
    expect(dust.bottom).toBeLessThanOrEqual(main.top);
  }
}

describe("make up", () => {
  test("thick and dense asks for water, half goes in by one key, and the next reading is compared with what was foretold", async () => {
    const { shop, logged } = await bucket([1, "bucket-read", dryReading]);
    showAt(shop, path, at);
    await expect.element(page.getByText(/^Add (0\.99|1).L of distilled water/)).toBeVisible();
    await expect.element(page.getByText("By composition")).toBeVisible();
    await tap("Add half of it");
    await expect.element(key(/^Water: 0\.5.L/)).toBeVisible();
    await expect.element(page.getByText(/It should then weigh 1\.69\d.g\/cm³ and read about/)).toBeVisible();
    await tap(/^Lid since the last top-up: on/);
    await tap("Log it as added");
    await expect.element(page.getByText("Not checked since.", { exact: true })).toBeVisible();
    const [top] = await logged("bucket-topped");
    expect(top?.body).toMatchObject({ flourKg: 0, solKg: 0, waterKg: 0.5, why: "evaporation", lid: "off" });
    expect(top?.body.expected?.densityGCm3).toBeCloseTo(1.699, 2);
    expect(top?.body.expected?.cupS).toBeGreaterThan(18);
  });

  test("no text field opens the system's keyboard where something is put in", async () => {
    const { shop } = await bucket([1, "bucket-read", dryReading]);
    showAt(shop, path, at);
    await tap("Something else");
    await tap(/^Water: none/);
    expect(document.querySelectorAll("input, textarea, select")).toHaveLength(0);
    await tap(/^1$/);
    await tap("Decimal mark");
    await tap(/^2$/);
    await tap("Take it");
    await expect.element(key(/^Water: 1\.2.L/)).toBeVisible();
  });

  test("flour: the mask is spoken of", async () => {
    const { shop, logged } = await bucket();
    showAt(shop, path, at);
    await tap("Add material");
    await tap(/^Flour: none/);
    await tap(/^3$/);
    await tap("Take it");
    await expect.element(page.getByText(/mask on/i)).toBeVisible();
    await tap("Log it as added");
    await expect.element(page.getByText("What to add")).toBeVisible();
    expect((await logged("bucket-topped"))[0]?.body).toMatchObject({ flourKg: 3, why: "correction" });
  });

  test("flour in a phone's hand: the main key is whole on the screen", async () => {
    await page.viewport(390, 844);
    const { shop } = await bucket([1, "bucket-read", dryReading]);
    showAt(shop, path, at);
    await tap("Something else");
    for (const name of [/^Water: none/, /^Binder: none/, /^Flour: none/]) {
      await tap(name);
      await tap(/^3$/);
      await tap("Take it");
    }
    await expect.element(page.getByText(/It should then weigh/)).toBeVisible();
    await expectWholeKey();
  });

  test("more than the bucket holds is said before it runs over, what fits is not", async () => {
    const { shop } = await bucket([1, "bucket-read", dryReading]);
    showAt(shop, path, at);
    await tap("Add half of it");
    await expect.element(page.getByText(/It should then weigh/)).toBeVisible();
    await expect.element(page.getByText(/full, it holds/)).not.toBeInTheDocument();
    await tap(/^Binder: none/);
    await tap(/^9$/);
    await tap("Take it");
    // 19 L by its ledger, half a litre of water, and 9 kg at 1.2: 27 L.
    await expect.element(page.getByText(/^That makes 2[67][.\d]*.L; full, it holds 20.L/)).toBeVisible();
  });

  test("a new batch over an old one, all four told: the main key is whole on the screen", async () => {
    await page.viewport(390, 844);
    const { shop } = await bucket();
    showAt(shop, path, at);
    await page.getByText("A first mix").click();
    await tap("Mix this");
    await expect.element(key(/^New volume: 20/)).toBeVisible();
    await expect.element(page.getByText(/^New batch: what was/)).toBeVisible();
    await expectWholeKey();
  });

  test("slow at the right density: no water, whatever the sums say", async () => {
    const { shop } = await bucket([1, "bucket-read", { ...dryReading, cupS: 34, densityGCm3: 1.683 }]);
    showAt(shop, path, at);
    await expect.element(page.getByText("Do not thin it").first()).toBeVisible();
    await expect.element(page.getByText(/^Add nothing/).first()).toBeVisible();
    await expect.element(key("Add this")).not.toBeInTheDocument();
  });

  test("over-watered: the sol at hand is refused in words, a stronger one solves it", async () => {
    const thin = { ...dryReading, cupS: 14, densityGCm3: 1.63 };
    const { shop } = await bucket([3, "bucket-read", thin], [1, "bucket-read", thin]);
    showAt(shop, path, at);
    await expect.element(page.getByText(/A sol of 30% can’t raise it/)).toBeVisible();
    await page.getByLabelText("Silica in the sol at hand").fill("40");
    await expect.element(page.getByText(/^Binder: 4\.\d+.kg$/)).toBeVisible();
    await expect.element(page.getByText(/^Flour: \d/).first()).toBeVisible();
  });

  test("a reading as foretold says that the sum was right", async () => {
    const water = {
      flourKg: 0,
      solKg: 0,
      waterKg: 1,
      why: "evaporation",
      expected: { densityGCm3: 1.681, cupS: 24 },
    };
    const { shop } = await bucket(
      [2, "bucket-topped", water],
      [1, "bucket-read", { ...dryReading, cupS: 24.4, densityGCm3: 1.684 }],
    );
    showAt(shop, `/buckets/${id}`, { route: "/buckets/:id", screen: BucketPage });
    await expect.element(page.getByText("As expected.")).toBeVisible();
  });

  test("a first mix of a flour nobody knows: by its volume, binder before flour", async () => {
    const { shop } = await bucket();
    showAt(shop, path, at);
    await page.getByText("A first mix").click();
    await page.getByRole("radio", { name: "Flour without a known mix ratio" }).click({ force: true });
    await page.getByLabelText("Flour density").fill("3.2");
    // 48 % of 20 L: 9.6 L of flour at 3.2 is 30.72 kg; 10.4 L of sol at 1.2 is 12.48 kg.
    await expect.element(page.getByText(/^Binder: 12\.48.kg \(10\.4.L\)/)).toBeVisible();
    await expect.element(page.getByText(/^Flour: 27\.65.kg/)).toBeVisible();
  });

  test("a measure far off what was written asks first, then is kept", async () => {
    const { shop, logged } = await bucket();
    showAt(shop, path, at);
    await page.getByText("Measured, lost, thrown away").click();
    await page.getByLabelText("In the bucket").fill("17");
    await tap("Log it");
    await expect.element(page.getByText(/^That is 15% less/)).toBeVisible();
    expect(await logged("bucket-counted")).toHaveLength(0);
    await tap("Log it as measured");
    await expect.element(page.getByText(/should be 17.L in it/)).toBeVisible();
    expect((await logged("bucket-counted"))[0]?.body).toEqual({ litre: 17 });
  });
});
