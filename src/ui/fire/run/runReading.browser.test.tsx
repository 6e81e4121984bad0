import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { burning, openRun } from "../../../../tests/burningDesk.tsx";
import { clearDesks, demoDesk, deskNow, type Desk } from "../../../../tests/demoDesk.tsx";

afterEach(clearDesks);

const key = (name: string | RegExp) => page.getByRole("button", { name });

describe("a kiln is read", () => {
  test("a kiln nobody read has an empty reading: it can't be logged until a key was touched", async () => {
    const desk = await demoDesk();
    await burning(desk);
    openRun(desk);
    await expect.element(page.getByText(/^Not read yet\. The keys start/)).toBeVisible();
    await expect.element(key("Log the reading")).toHaveAttribute("aria-disabled", "true");
    await key("Log the reading").click({ force: true });
    await key("Kiln: 25 more").click();
    // From the 20 °C of its start, by 25.
    await key(/^Log 45.°C$/).click();
    await expect
      .poll(async () => (await desk.logged("run-read")).map(({ body }) => body.kilnC))
      .toEqual([45]);
  });

  test("the keys start from the last reading carried along the plan, by five and by twenty-five", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(1, 290);
    openRun(desk);
    // The plan had 290 °C then; an hour of 200 K/h on it is 490 °C.
    await expect.element(key("Log the reading")).toHaveAttribute("aria-disabled", "true");
    await key(/^It shows 490.°C$/).click();
    await key("Kiln: 25 less").click();
    await key("Kiln: 5 less").click();
    await key(/^Log 460.°C$/).click();
    await expect.poll(async () => (await desk.logged("run-read"))[1]?.body.kilnC).toBe(460);
  });

  test("far off the plan the reading is empty and the keys start from the last reading", async () => {
    const desk = await demoDesk();
    const { read } = await burning(desk);
    await read(1.7, 506);
    openRun(desk);
    await expect.element(page.getByText(/^The last reading is far from the plan/)).toBeVisible();
    await expect.element(key(/^It shows/)).not.toBeInTheDocument();
    await key("Kiln: 5 more").click();
    await expect.element(key(/^Log 510.°C$/)).toBeVisible();
  });

  test("a kiln logger's file is looked through and taken in, clipped to the run", async () => {
    const desk = await demoDesk();
    await burning(desk);
    openRun(desk);
    const stamp = (hoursAgo: number) => new Date(deskNow - hoursAgo * hourMs).toISOString();
    const text = `time,temp °C\n${stamp(6)},18\n${stamp(3)},120\n${stamp(2)},150\n`;
    await page.getByText(/^More: type it/).click();
    const input = page.getByLabelText("File of a kiln logger (CSV)");
    await input.upload(new File([text], "kiln.csv", { type: "text/csv" }));
    await expect
      .element(page.getByText(/^2 readings of “temp °C”.*1 lines lie outside the run/))
      .toBeVisible();
    await key("Add them to the run").click();
    await expect
      .poll(async () => (await desk.logged("run-logged"))[0]?.body)
      .toEqual({
        source: "kiln.csv",
        afterS: [0, 3600],
        kilnC: [120, 150],
      });
  });
});

describe("a run that is over", () => {
  /** Ended two hours ago with 845 °C read, and 845 °C for 20 min in the log of its piece. */
  async function over(desk: Desk) {
    const { read } = await burning(desk);
    await read(3, 120);
    await read(2.5, 845);
    const end = [
      ["run/r", "run-ended", { result: "done" }],
      ["piece/demo-plaque", "burnout-ended", { result: "clean" }],
      ["piece/demo-plaque", "shell-fired", { peakC: 845, holdMin: 20, runId: "r" }],
    ] as const;
    for (const [stream, type, body] of end) {
      const command = { do: "log", stream, type, body, at: deskNow - 2 * hourMs };
      const done = await desk.shop.log(command as Parameters<typeof desk.shop.log>[0]);
      if (!done.ok) throw new Error(done.text);
    }
  }
  const stamp = (hoursAgo: number) => new Date(deskNow - hoursAgo * hourMs).toISOString();
  const hottest = () => page.getByText("Hottest", { exact: true }).element().nextElementSibling?.textContent;

  test("takes its logger's file in: hottest, holds and findings follow it", async () => {
    const desk = await demoDesk();
    await over(desk);
    openRun(desk);
    await expect.element(page.getByRole("heading", { name: "Burnout: over" })).toBeVisible();
    await expect.poll(() => hottest()).toMatch(/^845.°C$/);
    const rows = [
      [3.9, 40],
      [3.2, 130],
      [2.9, 700],
      [2.6, 868],
      [2.1, 866],
      [1, 300],
    ];
    const text = `time,temp °C\n${rows.map(([hoursAgo = 0, c]) => `${stamp(hoursAgo)},${c}`).join("\n")}\n`;
    const input = page.getByLabelText("File of a kiln logger (CSV)");
    await input.upload(new File([text], "kiln.csv", { type: "text/csv" }));
    await expect
      .element(page.getByText(/^5 readings of “temp °C”.*1 lines lie outside the run/))
      .toBeVisible();
    await key("Add them to the run").click();
    await expect.poll(() => hottest()).toMatch(/^868.°C$/);
    const steps = page.getByRole("list", { name: "Steps of the run" });
    await expect.element(steps.getByText(/^held \d+ min$/)).toBeVisible();
    await expect
      .element(page.getByRole("heading", { name: /Too fast through a limit: smoke/ }))
      .toBeVisible();
    const [late] = await desk.logged("run-logged");
    expect(late?.at).toBeLessThan(deskNow - 2 * hourMs);
  });

  test("a file of another day is refused in words, and nothing is logged", async () => {
    const desk = await demoDesk();
    await over(desk);
    openRun(desk);
    const input = page.getByLabelText("File of a kiln logger (CSV)");
    const text = `time,temp °C\n${stamp(60)},120\n${stamp(59)},130\n`;
    await input.upload(new File([text], "kiln.csv", { type: "text/csv" }));
    await expect.element(page.getByText(/^None of its readings falls within this run/)).toBeVisible();
    expect(await desk.logged("run-logged")).toEqual([]);
  });
});
