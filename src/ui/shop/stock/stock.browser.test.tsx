import { millisecondsInDay as dayMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { shopStream, type EntryBodies } from "../../../logbook/entries/entry.ts";
import { MaterialsPage } from "./MaterialsPage.tsx";
import { StockPage } from "./StockPage.tsx";

afterEach(clearDesks);

const tap = (name: string | RegExp) => page.getByRole("button", { name }).click({ delay: 60 });
const stock = { route: "/shop/stock", screen: StockPage };

/** A zircon flour, and a bucket of it that was mixed twenty days ago. */
async function withFlour(extra: Partial<EntryBodies["material-set"]> = {}): Promise<Desk> {
  const desk = await demoDesk();
  const { log } = desk.shop;
  const body = {
    materialId: "z",
    name: "Zircon, sacks",
    kind: "flour" as const,
    flourId: "zircon",
    pricePerKg: 4,
    currency: "kr",
    ...extra,
  };
  await log({ do: "log", stream: shopStream, type: "material-set", body, at: deskNow - 1000 });
  const stream = "bucket/first-prime";
  const set = { name: "Prime", use: "prime", slurry: "", flourId: "zircon" } as const;
  await log({ do: "log", stream, type: "bucket-set", body: set, at: deskNow - 21 * dayMs });
  const mix = { flourKg: 22, solKg: 6.1, waterKg: 0 };
  await log({ do: "log", stream, type: "bucket-mixed", body: mix, at: deskNow - 20 * dayMs });
  return desk;
}
const card = (name: string) => page.getByRole("region", { name });

describe("materials", () => {
  test("a price a pound is kept by the kilogram, in the shop's own currency", async () => {
    const { shop, logged } = await demoDesk({ units: "us" });
    showAt(shop, "/shop/materials", { route: "/shop/materials", screen: MaterialsPage });
    await page.getByLabelText("Name").fill("Sol, drum");
    await page.getByRole("radio", { name: "Binder" }).click({ force: true });
    await page.getByLabelText("Price a lb").fill("1.5");
    await page.getByLabelText("Currency").fill("dollars");
    await tap("Save the material");
    await expect.element(page.getByText("Binder, 1.5 dollars a lb")).toBeVisible();
    const [set] = await logged("material-set");
    expect(set?.body.pricePerKg).toBeCloseTo(1.5 / 0.453_592_37, 9);
    expect(set?.body).toMatchObject({ kind: "sol", currency: "dollars" });
  });
});

describe("stock", () => {
  test("what went into a bucket was taken off by itself; a count sets what is there", async () => {
    const { shop, logged } = await withFlour({ weeksToCome: 3 });
    showAt(shop, "/shop/stock", stock);
    const zircon = card("Zircon, sacks");
    await expect.element(zircon.getByText("Not counted yet")).toBeVisible();
    // 22 kg in twenty days.
    await expect.element(zircon.getByText(/^7\.7.kg a week/)).toBeVisible();
    await zircon.getByText(/^Ledger/).click();
    await expect.element(zircon.getByRole("cell", { name: "Made up Prime, calculated" })).toBeVisible();
    await zircon.getByText("Received, counted, lost").click();
    await zircon.getByLabelText("What", { exact: true }).selectOptions("counted");
    await zircon.getByLabelText("Weight").fill("40");
    await zircon.getByRole("button", { name: "Log it" }).click({ delay: 60 });
    await expect.element(zircon.getByText(/^40.kg/).first()).toBeVisible();
    expect((await logged("stock-moved"))[0]?.body).toEqual({ materialId: "z", how: "counted", massKg: 40 });
    await expect.element(zircon.getByText(/^Order at 23\.1.kg/)).toBeVisible();
  });

  test("below its reorder point it is said first", async () => {
    const { shop } = await withFlour({ weeksToCome: 8 });
    const body = { materialId: "z", how: "counted" as const, massKg: 1 };
    await shop.log({ do: "log", stream: shopStream, type: "stock-moved", body });
    showAt(shop, "/shop/stock", stock);
    await expect.element(page.getByRole("status")).toHaveTextContent(/Order now:.*Zircon, sacks/);
  });

  test("of two materials of one flour the screen says that the first gives all", async () => {
    const { shop } = await withFlour();
    const body = { materialId: "y", name: "Zircon, drum", kind: "flour" as const, flourId: "zircon" };
    await shop.log({ do: "log", stream: shopStream, type: "material-set", body });
    showAt(shop, "/shop/stock", stock);
    await expect.element(card("Zircon, drum").getByText(/off the first, Zircon, sacks/)).toBeVisible();
    await expect.element(card("Zircon, sacks").getByText(/all use is taken off this one/)).toBeVisible();
  });

  test("pieces left in a bucket follow from what was dipped, and shells are priced or say what is missing", async () => {
    const { shop } = await withFlour();
    showAt(shop, "/shop/stock", stock);
    await expect.element(page.getByText(/About \d+ pieces? left in it/).first()).toBeVisible();
    await expect
      .element(
        card("What a shell costs")
          .getByText(/of slurry|^Missing: /)
          .first(),
      )
      .toBeVisible();
  });
});
