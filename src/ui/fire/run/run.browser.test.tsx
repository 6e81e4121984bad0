import { cleanup } from "@testing-library/react";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { burning, openRun } from "../../../../tests/burningDesk.tsx";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { FirePage } from "../furnaces/FirePage.tsx";
import { rebuildProjections } from "../../../storage/rebuild.ts";
import { RunPlanPage } from "./RunPlanPage.tsx";

afterEach(clearDesks);

const key = (name: string | RegExp) => page.getByRole("button", { name });
const plaque = "Demo: plaque with two fish";

async function planPlaque(desk: Desk) {
  const shown = showAt(desk.shop, "/fire/run/new", { route: "/fire/run/new", screen: RunPlanPage });
  await page.getByRole("checkbox", { name: new RegExp(plaque) }).click();
  await page.getByRole("textbox", { name: "Mass of all patterns" }).fill("0.4");
  return shown;
}

describe("a plan", () => {
  test("asks for what it lacks, and says where every figure comes from", async () => {
    showAt((await demoDesk()).shop, "/fire/run/new", { route: "/fire/run/new", screen: RunPlanPage });
    await expect.element(page.getByText("Tick the pieces that go in.")).toBeVisible();
    await page.getByRole("checkbox", { name: new RegExp(plaque) }).click();
    await expect.element(page.getByText(/kg, estimate: /)).toBeVisible();
    // A person's own figure replaces the estimate, also where it is left open.
    await page.getByRole("textbox", { name: "Mass of all patterns" }).fill("");
    await expect.element(page.getByText(/^Enter the mass of the patterns/)).toBeVisible();
    await expect.element(page.getByText(/^Your figure\. By the log: .*estimate: /)).toBeVisible();
    await expect.element(page.getByText(/^7\.2.mm on .*by its caliper reading/)).toBeVisible();
    await expect.element(page.getByText("It has not been reviewed since its last coat.")).toBeVisible();
  });

  test("wax in a shell that is not dry is refused with what to do; said dry, it is planned", async () => {
    await planPlaque(await demoDesk());
    await page.getByRole("radio", { name: /^Not sure/ }).click({ force: true });
    await expect.element(page.getByText("Not dry yet, and wax inside")).toBeVisible();
    await expect.element(page.getByText(/Let it dry right through at room temperature/)).toBeVisible();
    await page.getByRole("radio", { name: "Dry", exact: true }).click({ force: true });
    await expect
      .element(page.getByRole("list", { name: "Steps of the plan" }))
      .toHaveTextContent("Open the hole in the floor, pan outside under it");
    await page.getByRole("radio", { name: "Staged", exact: true }).click({ force: true });
    await expect
      .element(page.getByRole("list", { name: "Steps of the plan" }))
      .toHaveTextContent("Kiln off. Take the tray out. Shut the door.");
  });

  test("a slope made steeper than its limit is told at once, and goes with the proposal put back", async () => {
    await planPlaque(await demoDesk());
    await page.getByRole("radio", { name: "Dry", exact: true }).click({ force: true });
    await page.getByRole("radio", { name: "Staged", exact: true }).click({ force: true });
    const smoke = page.getByRole("listitem").filter({ hasText: "Up to 430" });
    await smoke.getByRole("button", { name: /^Change step/ }).click();
    await userEvent.keyboard("{Tab}");
    for (let i = 0; i < 3; i += 1) await key("Rate: more").click();
    await expect
      .element(page.getByText(/^Too fast: smoke\. 230.°C\/h where 200.°C\/h is the most/))
      .toBeVisible();
    await key("Back to the proposal").click();
    await expect.element(page.getByText(/^Too fast: smoke/)).not.toBeInTheDocument();
  });

  test("with the tray of wax left in a kiln that goes hotter it can't be kept; burning inside is another plan", async () => {
    await planPlaque(await demoDesk());
    await page.getByRole("radio", { name: "Dry", exact: true }).click({ force: true });
    await page.getByRole("radio", { name: "Staged", exact: true }).click({ force: true });
    const out = page.getByRole("listitem").filter({ hasText: "Take the tray out" });
    await out.getByRole("button", { name: /^Change step/ }).click();
    await key("Take it out").click();
    await expect
      .element(page.getByText(/^Tray of wax still in the kiln\. The plan goes to 870/))
      .toBeVisible();
    await expect.element(key("Save this plan")).toHaveAttribute("aria-disabled", "true");
    const leaves = page.getByRole("group", { name: "Does the wax leave the kiln?" });
    await leaves.getByRole("radio", { name: "No" }).click({ force: true });
    await expect.element(page.getByText(/of wax stays in the kiln and burns there/)).toBeVisible();
    await expect.element(key("Save this plan")).not.toHaveAttribute("aria-disabled");
    const steps = page.getByRole("list", { name: "Steps of the plan" });
    await expect.element(steps).not.toHaveTextContent("Take the tray out");
  });

  test("is kept with what it was made for, and leads to its run", async () => {
    const desk = await demoDesk({ units: "us" });
    const { places } = await planPlaque(desk);
    await page.getByRole("radio", { name: "Dry", exact: true }).click({ force: true });
    await page.getByRole("textbox", { name: "Note" }).fill(" second shelf ");
    await key("Save this plan").click();
    await expect.poll(() => places.at(-1)).toMatch(/^\/fire\/run\/[0-9a-f-]{36}$/);
    const [planned] = await desk.logged("run-planned");
    expect(planned?.body).toMatchObject({ purpose: "burnout", pieceIds: ["demo-plaque"], startC: 20 });
    expect(planned?.body.segments.length).toBeGreaterThan(10);
    expect(planned?.body.note).toBe("second shelf");
    const basis = planned?.body.basis;
    expect(basis).toMatchObject({
      wallMm: expect.closeTo(7.2, 9),
      damp: "dry",
      pattern: { material: "wax" },
    });
    // 0.4 lb, as typed by someone who weighs in pounds.
    expect(basis?.pattern?.massKg).toBeCloseTo(0.1814, 4);
  });
});

describe("a plan that waits", () => {
  test("says what speaks against a start in a kiln hotter than it was planned for", async () => {
    const desk = await demoDesk();
    await burning(desk, { isStarted: false });
    openRun(desk);
    const kilnNow = page.getByRole("spinbutton", { name: /^Kiln now/ });
    await expect.element(kilnNow).toHaveTextContent("not set");
    await expect.element(key("Start the run")).toHaveAttribute("aria-disabled", "true");
    await key(/^Same as planned: 20/).click();
    await expect.element(kilnNow).toHaveTextContent("20");
    await expect.element(key("Start the run")).not.toHaveAttribute("aria-disabled");
    await expect.element(page.getByText(/too hot for staged/)).not.toBeInTheDocument();
    (kilnNow.element() as HTMLElement).focus();
    await userEvent.keyboard("{End}");
    await expect.element(page.getByText("The kiln is too hot for staged")).toBeVisible();
  });

  test("is put away, lies under what is through, and comes out again", async () => {
    const desk = await demoDesk();
    await burning(desk, { isStarted: false });
    openRun(desk);
    await expect.element(key("Start the run")).toBeVisible();
    await key("Cancel plan").click();
    await expect.element(page.getByRole("heading", { name: "Burnout: cancelled" })).toBeVisible();
    await expect.element(key("Start the run")).not.toBeInTheDocument();
    expect((await desk.logged("run-ended")).map(({ body }) => body)).toEqual([{ result: "stopped" }]);
    cleanup();
    showAt(desk.shop, "/fire", { route: "/fire", screen: FirePage });
    const line = page.getByRole("region", { name: "Kiln runs" }).getByRole("link", { name: /cancelled/ });
    await expect.element(line).toHaveTextContent("Burnout, 1 piece");
    cleanup();
    openRun(desk);
    await key("Restore the plan").click();
    await expect.element(key("Start the run")).toBeVisible();
  });
});

describe("a run under way", () => {
  test("says what is next, how far behind it is and what went wrong; the numbers never control the kiln", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(3, 100);
    await read(1, 150);
    await read(0.5, 420);
    openRun(desk);
    const next = page.getByRole("region", { name: "Next at the kiln" });
    await expect.element(next).toHaveTextContent("Place the shell cup down");
    await expect.element(page.getByText(/Dipbook does not control the kiln/)).toBeVisible();
    await expect
      .element(page.getByRole("heading", { name: /Too fast through a limit: smoke/ }))
      .toBeVisible();
    await expect.element(page.getByRole("heading", { name: /Vents not ticked as open/ })).toBeVisible();
    await next.getByRole("button", { name: "Done" }).click();
    await expect.poll(async () => (await desk.logged("run-step-done"))[0]?.body.segment).toBe(0);
    await expect.element(next).not.toHaveTextContent("Place the shell cup down");
  });

  test("late, the rest of the plan is moved to where it is", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(2.7, 150);
    await read(1.7, 150);
    await read(0, 290);
    openRun(desk);
    await expect.element(page.getByText(/behind the plan\./)).toBeVisible();
    await key("Move the rest of the plan to now").click();
    await expect.element(page.getByText("On the plan.")).toBeVisible();
    const [changed] = await desk.logged("run-changed");
    expect(changed?.body.segments.at(-1)).toMatchObject({ kind: "hold", minutes: 90 });
    expect(changed?.body.segments).toHaveLength(6);
  });

  test("a reading no sum takes, as an old log may hold, is left out and named on the run's page", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(2, 150);
    const [row] = await desk.logged("run-read");
    const far = { ...row, id: "far", at: deskNow - 1.5 * hourMs, body: { kilnC: 2500 } };
    await desk.db.entries.add(far as never);
    await rebuildProjections(desk.db);
    openRun(desk);
    const leftOut = page.getByRole("list", { name: "Left out of calculations" });
    await expect.element(leftOut).toHaveTextContent(/^Kiln temperature 2,500.°C on .* is out of range/);
    await expect.element(leftOut.getByRole("link")).toHaveAttribute("href", "#entry-far");
    expect(document.getElementById("entry-far")).not.toBeNull();
    await expect.element(page.getByRole("region", { name: "Next at the kiln" })).toBeVisible();
    // 150 °C two hours ago, 2 h 20 min at 200 K/h less the twenty minutes it was held: carried along the plan.
    await expect.element(key(/^It shows \d+.°C$/)).toBeVisible();
  });

  test("a crack sends its piece back; the end writes stopped into its log and closes the run", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(2, 150);
    openRun(desk);
    await key(`Crack found in ${plaque}`).click();
    await page.getByRole("radio", { name: "Open" }).click({ force: true });
    await page.getByRole("textbox", { name: "Where" }).fill("left fin");
    await key("Log the crack, back to its coats").click();
    await expect.element(page.getByText(/cracked in this run \(left fin\)/)).toBeVisible();
    expect((await desk.logged("crack-found"))[0]?.body).toEqual({
      kind: "open",
      where: "left fin",
      stage: "burnout",
      runId: "r",
    });
    await key("End the run…").click();
    await key(/^End the run (with|and log) /).click();
    await expect.poll(async () => (await desk.logged("run-ended"))[0]?.body.result).toBe("done");
    expect((await desk.logged("burnout-ended")).map(({ body }) => body)).toEqual([{ result: "stopped" }]);
    expect(await desk.logged("shell-fired")).toEqual([]);
  });
});
