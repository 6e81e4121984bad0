import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { BucketLimitsPage } from "./BucketLimitsPage.tsx";

afterEach(clearDesks);

const open = (desk: Desk) =>
  showAt(desk.shop, "/shop/slurry-limits", { route: "/shop/slurry-limits", screen: BucketLimitsPage });
const field = (name: string) => page.getByRole("textbox", { name, exact: true });
const save = () => page.getByRole("button", { name: "Save the limits" });
const limitsLogged = async (desk: Desk) =>
  (await desk.logged("shop-figures-set")).flatMap(({ body }) => body.bucketLimits ?? []);

describe("the slurry limits of a shop", () => {
  test("stand empty with the typical value beside each, and without a source in the sentence", async () => {
    open(await demoDesk());
    await expect.element(field("OK from").first()).toHaveValue("");
    await expect.element(page.getByText(/^Empty: 12.h$/)).toBeVisible();
    await expect.element(page.getByText(/^Typical values\. Replace them with your supplier/)).toBeVisible();
    await expect.element(page.getByText(/no source|patent|from memory/)).not.toBeInTheDocument();
    await expect.element(save()).toHaveAttribute("aria-disabled", "true");
  });

  test("are saved in canonical units and come back as typed", async () => {
    const desk = await demoDesk({ units: "us" });
    open(desk);
    await field("OK from").first().fill("64.4");
    await field("New prime").fill("12");
    await save().click();
    await expect.poll(() => limitsLogged(desk)).toHaveLength(1);
    const [limits] = await limitsLogged(desk);
    expect(limits?.fitLowC).toBeCloseTo(18, 6);
    expect(limits).toMatchObject({ primeMadeH: 12, fitHighC: null });
    await expect.element(field("New prime")).toHaveValue("12");
  });

  test("out of range, and against the typical value of its pair, are refused with numbers", async () => {
    const desk = await demoDesk();
    open(desk);
    await field("New prime").fill("2000");
    await save().click();
    await expect
      .element(page.getByText(/Found 2,000.h for the mixing of a new prime, expected 0.h to 336.h/).first())
      .toBeVisible();
    await field("New prime").fill("");
    await field("OK from").first().fill("30");
    await save().click();
    await expect.element(page.getByText(/Found 30.°C, expected 25.°C or less/).first()).toBeVisible();
    expect(await limitsLogged(desk)).toEqual([]);
  });
});
