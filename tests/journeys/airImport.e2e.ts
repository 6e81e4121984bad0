import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const start = "2026-03-02T08:00:00+01:00";
const everyMin = 10;
const days = 14;
/** The logger lost its probe once, on the first of March. */
const lostAt = Date.parse("2026-03-01T03:10:00+01:00");

/**
 * What a logger in °F on a German computer writes: semicolons, decimal commas, day before month, date and clock apart,
 * a head of its own. Warmer by day; from ten in the evening of the first of March until six it is damp.
 */
function loggerFile(): { readonly text: string; readonly lostLine: number; readonly readings: number } {
  const end = Date.parse(start);
  const first = end - days * 86_400_000;
  const write = (value: number): string => value.toFixed(1).replace(".", ",");
  const date = new Intl.DateTimeFormat("de-DE", {
    timeZone: "Europe/Berlin",
    day: "2-digit",
    month: "2-digit",
    year: "numeric",
  });
  const clock = new Intl.DateTimeFormat("de-DE", { timeZone: "Europe/Berlin", timeStyle: "medium" });
  const head = [
    "Aufzeichnung Schuppen Nord",
    "Seriennummer;00417",
    "",
    "Datum;Uhrzeit;Temperatur [°F];Feuchte [%]",
  ];
  const lines: string[] = [...head];
  let lostLine = 0;
  for (let at = first; at < end; at += everyMin * 60_000) {
    const hour = ((at + 3_600_000) % 86_400_000) / 3_600_000;
    const airC = 16 - 4 * Math.cos(((hour - 4) / 24) * 2 * Math.PI);
    const isDamp =
      at >= Date.parse("2026-03-01T22:00:00+01:00") && at < Date.parse("2026-03-02T06:00:00+01:00");
    const when = `${date.format(at)};${clock.format(at)}`;
    if (at === lostAt) lostLine = lines.length + 1;
    lines.push(
      at === lostAt ? `${when};Err 3;---` : `${when};${write(airC * 1.8 + 32)};${write(isDamp ? 87 : 52)}`,
    );
  }
  return { text: `${lines.join("\r\n")}\r\n`, lostLine, readings: lines.length - head.length - 1 };
}

const bringIn = async (page: Page, text: string): Promise<void> =>
  page
    .getByLabel("The logger’s file")
    .setInputFiles({ name: "Schuppen Nord.csv", mimeType: "text/csv", buffer: Buffer.from(text, "utf8") });

test("a logger's file with a bad line is brought in without it, and a damp night is seen in the room's day", async ({
  page,
}) => {
  await visitOnceThenOffline(page, start);
  const maker = makerAt(page, handsOn(page));
  const { text, lostLine, readings } = loggerFile();
  await maker.goTo("Rooms");
  await maker.tap(page.getByRole("link", { name: /^Drying room/ }));
  await maker.onScreen("Drying room");

  await test.step("the file is guessed, and its bad line named by number", async () => {
    await maker.tap(page.getByRole("link", { name: "Import", exact: true }));
    await maker.onScreen("A logger’s file");
    await bringIn(page, text);
    await expect(
      page.getByText("Time: “Datum” and “Uhrzeit”, day, month, year, clock of Europe/Berlin"),
    ).toBeVisible();
    await expect(page.getByText("Temperature: “Temperatur [°F]”, in °F")).toBeVisible();
    await expect(page.getByText("Columns separated by a semicolon, decimal comma")).toBeVisible();
    await expect(
      page.getByText(`Line ${lostLine}, temperature: found “Err 3”, expected a number.`),
    ).toBeVisible();
  });

  await test.step("refused as a whole nothing is written; skipped, all the others are", async () => {
    const key = maker.key(/^Import [\d,]+ readings$/);
    await maker.choose("What to do with them", "Refuse the whole file");
    await expect(key).toHaveAttribute("aria-disabled", "true");
    expect(await linesOf(page, "air-logged")).toEqual([]);
    await maker.choose("What to do with them", "Skip them");
    await maker.tap(key);
    await expect(page.getByText(/in the log of Drying room\./)).toContainText(`Skipped: line ${lostLine}.`);
    const blocks = await linesOf(page, "air-logged");
    const counts = blocks.map(({ body }) => (body["afterS"] as readonly number[]).length);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(readings);
    expect(blocks.every(({ body }) => body["source"] === "Schuppen Nord.csv")).toBe(true);
  });

  await test.step("the damp night is told, drawn and read along the line", async () => {
    await maker.tap(page.getByRole("link", { name: "See the last day" }));
    await maker.onScreen("Drying room: today");
    await expect(page.getByText(/^Damp: over 70% from 00:00 to 0[56]:\d0, at most 87%\.$/)).toBeVisible();
    await expect(
      page.getByText(/^The next 24 hours repeat .* off by a median of .* \(\d+ days\)/),
    ).toBeVisible();
    await maker.tap(maker.key("The day before"));
    await maker.onScreen("Drying room: yesterday");
    await expect(page.getByText(/^Damp: over 70% from 2[12]:\d0 to 00:00, at most 87%\.$/)).toBeVisible();
    const slider = page.getByRole("slider", { name: "Look at a time" });
    await slider.fill(String(Date.parse("2026-03-01T23:00:00+01:00")));
    await expect(page.getByRole("status").filter({ hasText: "23:00" })).toContainText("87%");
    await maker.tap(page.getByText("As a table"));
    await expect(page.getByRole("row", { name: /^Sun 23:00 .* 87%/ })).toBeVisible();
    await expect(page.getByRole("row", { name: /^Sun 12:00 .* 52%/ })).toBeVisible();
  });

  await test.step("brought in again it changes nothing, and taken back it is gone from the room", async () => {
    await maker.tap(page.getByRole("link", { name: "Back" }));
    await maker.tap(page.getByRole("link", { name: "Import", exact: true }));
    await bringIn(page, text);
    await expect(page.getByText(/readings are in the log already and stay as they are\.$/)).toBeVisible();
    await maker.tap(page.getByRole("link", { name: "Back" }));
    await expect(page.getByText("The last two days")).toBeVisible();
    await maker.tap(maker.key("Take back Schuppen Nord.csv"));
    await expect(page.getByText("Taken back: Schuppen Nord.csv")).toBeVisible();
    await expect(page.getByText("No reading yet.", { exact: false })).toBeVisible();
  });
});
