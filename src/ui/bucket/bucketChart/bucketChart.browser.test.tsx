import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../tests/demoDesk.tsx";
import { BucketChartPage } from "./BucketChartPage.tsx";

afterEach(clearDesks);

const id = "first-backup";
const at = { route: "/buckets/:id/chart", screen: BucketChartPage };
/** Ten that set the limits, then five that climb: limits 11.86 and 13.34, worked by hand from 12.60 ± 3 · 0.2778 ÷ 1.128. */
const seconds = [12.4, 12.7, 12.5, 12.9, 12.6, 12.8, 12.3, 12.6, 12.7, 12.5];

async function desk(values: readonly number[], band: boolean) {
  const { shop } = await demoDesk();
  const stream = `bucket/${id}` as const;
  const start = deskNow - (values.length + 1) * 24 * hourMs;
  const targets = { cupId: "zahn-4", slurryC: 22, ...(band ? { lowS: 11, highS: 14 } : {}) };
  const body = { name: "Backup", use: "backup", slurry: "", ...targets } as const;
  await shop.log({ do: "log", stream, type: "bucket-set", body, at: start - hourMs });
  for (const [i, cupS] of values.entries())
    await shop.log({
      do: "log",
      stream,
      type: "bucket-read",
      body: { cupId: "zahn-4", cupS, slurryC: 22 },
      at: start + i * 24 * hourMs,
    });
  showAt(shop, `/buckets/${id}/chart`, at);
}

describe("the chart of a bucket", () => {
  test("the target band is a field and the bucket's own limits are lines, with their figures", async () => {
    await desk(seconds, true);
    const chart = page.getByRole("img", { name: /^Viscosity/ });
    await expect.element(chart).toBeVisible();
    await expect.element(page.getByText("limit 13.3")).toBeVisible();
    await expect.element(page.getByText("limit 11.9")).toBeVisible();
    await expect.element(page.getByText(/^Middle 12\.6 s, limits 11\.86 and 13\.34/)).toBeVisible();
    expect(document.querySelectorAll("svg rect[fill^='url']")).toHaveLength(1);
    await expect.element(page.getByText(/^Provisional limits/)).toBeVisible();
    await expect.element(page.getByText(/^None\. Don’t correct/)).toBeVisible();
  });

  test("without a target only the limits are drawn, and it is said why", async () => {
    await desk(seconds, false);
    await expect.element(page.getByText(/none is set for this bucket/)).toBeVisible();
    expect(document.querySelectorAll("svg rect[fill^='url']")).toHaveLength(0);
  });

  test("a reading far out is a signal: which rule, what it means, what to look at first, and in the table", async () => {
    await desk([...seconds, 12.6, 15.5], true);
    await expect.element(page.getByText(/^Rule 1, beyond the limit\./)).toBeVisible();
    await expect.element(page.getByText(/Check the temperature/)).toBeVisible();
    await page.getByText("As a table").click();
    await expect.element(page.getByRole("row", { name: /^12 .* 15\.5 2\.9/ })).toBeVisible();
  });

  test("the moving range stands beside it with its limit; a step beyond is marked and in its table", async () => {
    await desk([...seconds, 12.6, 15.5], true);
    await expect.element(page.getByRole("img", { name: /^Moving range/ })).toBeVisible();
    // Twelve readings, provisional: the mean step is 5.5 ÷ 11, its limit 3.267 times that.
    await expect.element(page.getByText(/^One step is wider than the limit of 1\.63 s/)).toBeVisible();
    await page.getByText("Every step in figures").click();
    await expect.element(page.getByRole("row", { name: /^12 .* 2\.9 beyond the limit/ })).toBeVisible();
    await expect.element(page.getByRole("row", { name: /^1 .* –/ }).first()).toBeVisible();
  });

  test("steady readings have no step beyond the limit", async () => {
    await desk(seconds, true);
    await expect.element(page.getByText(/^No step is wider than its limit of 0\.91 s/)).toBeVisible();
  });

  test("under ten readings no limits are drawn", async () => {
    await desk(seconds.slice(0, 9), true);
    await expect.element(page.getByText(/from ten checks on/)).toBeVisible();
    await expect.element(page.getByText(/^limit/)).not.toBeInTheDocument();
  });

  test("at 390 px nothing sticks out of the screen", async () => {
    await page.viewport(390, 844);
    await desk([...seconds, ...seconds, ...seconds, ...seconds, ...seconds], true);
    await expect.element(page.getByText(/the table has them all/)).toBeVisible();
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  });
});
