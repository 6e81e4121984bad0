import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../../tests/demoDesk.tsx";
import { readRoom } from "../../../../storage/reads.ts";
import { RoomPage } from "../RoomPage.tsx";
import { ImportPage } from "./ImportPage.tsx";

beforeEach(() => {
  Object.defineProperty(navigator, "languages", { value: ["en-GB"], configurable: true });
});
afterEach(clearDesks);

const screen = { route: "/rooms/:id/import", screen: ImportPage };
const path = "/rooms/first/import";
const two = (value: number): string => String(value).padStart(2, "0");
const put = (file: File) => page.getByLabelText("The logger’s file").upload(file);
const bring = page.getByRole("button", { name: /^Import \d/ });

/** A logger on a shed's wall: a reading every half hour of two days, told as in many a German export. */
function shed({ bad = [] }: { readonly bad?: readonly number[] } = {}): File {
  const rows = Array.from({ length: 96 }, (_, i) => {
    const at = new Date(Date.UTC(2026, 1, 20) + i * 1_800_000);
    const date = `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()} ${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`;
    const temp = bad.includes(i) ? "---" : `${10 + (i % 48) / 8}`.replace(".", ",");
    return `${date};${temp};${(60 + (i % 20)).toFixed(1).replace(".", ",")}`;
  });
  const head = ["Zeit (UTC);Temperatur °C;Feuchte %"];
  return new File([[...head, ...rows].join("\r\n")], "shed.csv", { type: "text/csv" });
}

describe("a logger's file with a bad line", () => {
  test("is brought in without it, told by number, once, and taken back whole", async () => {
    const { db, shop, logged } = await demoDesk();
    showAt(shop, path, screen);
    await put(shed({ bad: [13] }));
    await expect.element(page.getByText("Temperature: “Temperatur °C”, in °C")).toBeVisible();
    await expect
      .element(page.getByText("Line 15, temperature: found “---”, expected a number.").last())
      .toBeVisible();
    await expect.element(bring).toHaveAttribute("aria-disabled", "true");
    await page.getByRole("radio", { name: "Refuse the whole file" }).click();
    await expect.element(page.getByText(/^The whole file is refused/)).toBeVisible();
    await page.getByRole("radio", { name: "Skip them" }).click();
    await bring.click();
    await expect
      .element(page.getByText(/^95 readings, .* in the log of Drying room\. Skipped: line 15\./))
      .toBeVisible();
    const blocks = await logged("air-logged");
    expect(blocks.map(({ body }) => body.afterS.length)).toEqual([47, 48]);
    expect(blocks[0]?.at).toBe(Date.UTC(2026, 1, 20));
    expect(blocks[0]?.body).toMatchObject({ source: "shed.csv", air: null });

    await page.getByRole("button", { name: "Another file" }).click();
    await put(shed({ bad: [13] }));
    await expect
      .element(page.getByText("95 readings are in the log already and stay as they are."))
      .toBeVisible();
    await expect.element(page.getByText("All of these readings are in the log already.")).toBeVisible();

    showAt(shop, "/rooms/first", { route: "/rooms/:id", screen: RoomPage });
    await expect.element(page.getByText(/^A logger’s file, brought in/)).toBeVisible();
    await page.getByRole("button", { name: "Take back shed.csv" }).click();
    await expect.poll(async () => (await readRoom(db, "first"))?.readings).toEqual([]);
    expect(await logged("entry-struck")).toHaveLength(2);
  });

  test("is refused in °F with the range in the person's own units", async () => {
    const { shop } = await demoDesk({ units: "us" });
    showAt(shop, path, screen);
    const rows = [
      "Time,Temp F,RH",
      "2026-02-20 08:00,61.5,55",
      "2026-02-20 09:00,888,55",
      "2026-02-20 10:00,62,56",
    ];
    await put(new File([rows.join("\n")], "us.csv"));
    await expect
      .element(page.getByText(/^Line 3, temperature: found “888”, expected -22.°F to 140.°F\.$/).last())
      .toBeVisible();
  });
});

test("a date that can be read two ways waits for a person, and is read as they say", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, path, screen);
  const rows = [
    "Date,Temp C,RH %",
    "03/02/2026 08:00,20.5,55",
    "03/02/2026 09:00,21,54",
    "03/02/2026 10:00,21.5,53",
  ];
  await put(new File([rows.join("\n")], "open.csv"));
  await expect.element(page.getByText("Which day is “03/02/2026 08:00”?")).toBeVisible();
  await expect.element(bring).not.toBeInTheDocument();
  await page.getByRole("button", { name: /3 February 2026/ }).click();
  await bring.click();
  await expect.poll(async () => (await logged("air-logged"))[0]?.at).toBe(Date.UTC(2026, 1, 3, 8));
});

test("a column and a unit guessed wrong are changed, and the file is read again with them", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, path, screen);
  const rows = Array.from({ length: 5 }, (_, i) => `2026-02-2${i} 08:00;55,${i};60,1;12,${i}`);
  await put(new File([["Zeit;Feuchte;A;B", ...rows].join("\n")], "odd.csv"));
  await page.getByLabelText("Temperature column").selectOptions("3");
  await page.getByLabelText("Temperature unit").selectOptions("C");
  await page.getByLabelText("Air movement around the pieces").selectOptions("rack-fan");
  await bring.click();
  await expect.poll(async () => (await logged("air-logged")).length).toBe(5);
  const [first] = await logged("air-logged");
  expect(first?.body).toMatchObject({ airC: [12], rh: [0.55], air: "rack-fan" });
});

test("readings that have not come yet are told, not logged: the zone is wrong", async () => {
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  const at = new Date(deskNow + 3_600_000).toISOString().slice(0, 16).replace("T", " ");
  await put(
    new File([["Time;Temp C;RH %", "2026-03-04 08:00;20;50", `${at};20;50`].join("\n")], "ahead.csv"),
  );
  await expect
    .element(page.getByText(/^Line 3, time: found .* expected a time in the past/).last())
    .toBeVisible();
});

test("a file without readings says what it should be", async () => {
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  await put(new File(["hello"], "hello.txt"));
  await expect.element(page.getByText(/^No line in this file/)).toBeVisible();
  await put(new File([], "empty.csv"));
  await expect.element(page.getByText("This file is empty.")).toBeVisible();
});

test("a long file shows how far it is, can be stopped, and read again", async () => {
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  const start = Date.UTC(2024, 0, 1);
  const lines = Array.from(
    { length: 150_000 },
    (_, i) => `${(start + i * 60_000) / 1000},20.${i % 10},5${i % 10}`,
  );
  await put(new File([["epoch,temp C,RH %", ...lines].join("\n")], "long.csv"));
  await expect.element(page.getByRole("progressbar")).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect.element(page.getByText("Stopped.")).toBeVisible();
  await page.getByRole("button", { name: "Read it again" }).click();
  await expect.element(page.getByText(/^150,000 readings, /)).toBeVisible();
});
