import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { passEventMs } from "../../../../tests/eventClock.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ReadPage } from "./ReadPage.tsx";
import { BucketPage } from "../buckets/BucketPage.tsx";

afterEach(clearDesks);

const route = "/buckets/:id/read";
const id = "first-prime";
const aims: EntryBodies["bucket-set"] = {
  name: "Prime",
  use: "prime",
  slurry: "fused silica",
  flourId: "fused-silica",
  ratio: 1.7,
  cupId: "zahn-4",
  lowS: 18,
  highS: 26,
  slurryC: 22,
  fullL: 20,
};

async function bucketDesk(): Promise<Desk> {
  const desk = await demoDesk();
  await desk.shop.log({
    do: "log",
    stream: `bucket/${id}`,
    type: "bucket-set",
    body: aims,
    at: deskNow - 3_600_000,
  });
  return desk;
}
const key = (name: string | RegExp) => page.getByRole("button", { name });
const tap = (name: string | RegExp) => key(name).click({ delay: 60 });
async function typed(digits: string): Promise<void> {
  for (const digit of digits) await tap(digit === "." ? "Decimal mark" : new RegExp(`^${digit}$`));
}
const heading = (name: string | RegExp) => page.getByRole("heading", { level: 1, name });

/** Types the seconds of one dip, as another watch told them. */
async function dip(title: RegExp, seconds: string): Promise<void> {
  await expect.element(heading(title)).toBeVisible();
  await tap("Type it in");
  await typed(seconds);
  await tap("Next");
}

describe("a reading at the bucket", () => {
  test("two dips, temperature, weighed density and pH go into the log as they were read, and are judged", async () => {
    const { shop, logged } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await dip(/^First dip/, "24.2");
    await dip(/^Second dip/, "23.8");
    await expect.element(heading("Slurry temperature")).toBeVisible();
    await typed("22");
    await tap("Next");
    await tap(/^Weighed/);
    await typed("168.2");
    await tap("Next");
    await typed("9.6");
    await tap("Next");
    await expect.element(page.getByText("24 s (24.2, 23.8)".replace(" s", "\u00a0s"))).toBeVisible();
    await tap("Log the reading");
    await expect.element(page.getByText("OK to dip")).toBeVisible();
    // 14.8 · (24 − 5), ASTM D4212.
    await expect.element(page.getByText(/≈ 281.mm²\/s/)).toBeVisible();
    const [read] = await logged("bucket-read");
    expect(read?.body).toEqual({
      cupId: "zahn-4",
      cupS: 24,
      dipsS: [24.2, 23.8],
      slurryC: 22,
      weighedG: 168.2,
      weighedMl: 100,
      pH: 9.6,
    });
  });

  test("dips that differ by more than 8 % ask for a third, and all may be left out", async () => {
    const { shop, logged } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await dip(/^First dip/, "20");
    await dip(/^Second dip/, "23");
    await dip(/^Third dip/, "22.6");
    await tap("Skip");
    await tap("Skip");
    await tap("Skip");
    await tap("Log the reading");
    await expect.element(page.getByText("OK to dip")).toBeVisible();
    expect((await logged("bucket-read"))[0]?.body).toEqual({
      cupId: "zahn-4",
      cupS: 22.8,
      dipsS: [20, 23, 22.6],
    });
  });

  test("below the standard's range is said plainly, and out of the band is a reason not to dip", async () => {
    const { shop } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await dip(/^First dip/, "12");
    await tap("Skip");
    await tap("Skip");
    await tap("Skip");
    await tap("Skip");
    await tap("Log the reading");
    await expect.element(page.getByText("Do not dip")).toBeVisible();
    await expect.element(page.getByText(/^Below the standard's range \(20 to 80.s\)/)).toBeVisible();
  });

  test("a reading that was logged by mistake is struck with one tap", async () => {
    const { shop, logged } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await dip(/^First dip/, "24");
    for (let i = 0; i < 4; i++) await tap("Skip");
    await tap("Log the reading");
    passEventMs(750);
    await tap("Undo");
    await expect.element(heading(/^First dip/)).toBeVisible();
    expect(await logged("entry-struck")).toHaveLength(1);
  });

  test("nobody needs the system's keyboard, and the keys are wide enough for a glove", async () => {
    await page.viewport(390, 844);
    const { shop } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await expect.element(heading(/^First dip/)).toBeVisible();
    await tap("Type it in");
    await expect.element(key("7")).toBeVisible();
    expect(document.querySelectorAll("input, textarea")).toHaveLength(0);
    for (const button of key(/^\d$|less$|more$|Decimal|Back by one|Skip|Next/).elements()) {
      const { height, width, left, right } = button.getBoundingClientRect();
      expect(Math.min(height, width)).toBeGreaterThanOrEqual(72);
      expect(left).toBeGreaterThanOrEqual(24);
      expect(right).toBeLessThanOrEqual(390 - 24);
    }
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  });

  test("the stopwatch counts from the finger coming down to the next one, to a fifth of a second", async () => {
    const { shop: given } = await bucketDesk();
    let now = deskNow;
    const shop = { ...given, clock: () => now };
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await tap(/^Start/);
    now += 23_470;
    await expect.element(key(/^Stop/)).toBeVisible();
    passEventMs(750);
    await tap(/^Stop/);
    await expect.element(key(/^Take 23\.4.s/)).toBeVisible();
  });

  test("a number no slurry has is not taken, and the screen says what was expected", async () => {
    const { shop } = await bucketDesk();
    showAt(shop, `/buckets/${id}/read`, { route, screen: ReadPage });
    await expect.element(heading(/^First dip/)).toBeVisible();
    await tap("Skip");
    await typed("99");
    await tap("Next");
    await expect.element(page.getByText(/Found 99.°C, expected 0.°C to 60.°C/)).toBeVisible();
  });
});

test("the bucket's page tells the verdict with its reasons, and what it should read", async () => {
  const { shop } = await bucketDesk();
  const body = { cupId: "zahn-4", cupS: 31, slurryC: 22, densityGCm3: 1.717 };
  await shop.log({ do: "log", stream: `bucket/${id}`, type: "bucket-read", body });
  showAt(shop, `/buckets/${id}`, { route: "/buckets/:id", screen: BucketPage });
  await expect.element(page.getByRole("heading", { name: "Do not dip" })).toBeVisible();
  await expect.element(page.getByText(/Viscosity out of range: 31.s; range 18.s to 26.s/)).toBeVisible();
  await expect.element(page.getByText(/Add 1\.\d+.L of distilled water/)).toBeVisible();
  await expect.element(page.getByText("18 to 26\u00a0s in Zahn 4")).toBeVisible();
  await expect
    .element(page.getByRole("link", { name: "Check the slurry" }))
    .toHaveAttribute("href", `/buckets/${id}/read`);
});
