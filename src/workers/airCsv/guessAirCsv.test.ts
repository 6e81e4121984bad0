import { describe, expect, test } from "vitest";
import type { AirCsvPlan } from "./airCsvPlan.ts";
import { guessAirCsv } from "./guessAirCsv.ts";
import { previewAirCsv } from "./previewAirCsv.ts";
import { readAirCsv } from "./readAirCsv.ts";

const zone = "Europe/Lisbon";
const nowMs = Date.UTC(2026, 5, 1);
const guess = async (text: string | Uint8Array<ArrayBuffer>) => {
  const found = await guessAirCsv(new Blob([text]), { zone });
  if (!found.ok) throw new Error(found.why);
  return found;
};
/** Guessed and read: the readings as [UTC, °C, rh]. */
async function readAll(text: string | Uint8Array<ArrayBuffer>, change: Partial<AirCsvPlan> = {}) {
  const { plan } = await guess(text);
  const result = await readAirCsv(new Blob([text]), { ...plan, ...change }, { onBad: "refuse", nowMs });
  if (!result.ok) throw new Error(JSON.stringify(result));
  const { atS, airC, rh } = result.air;
  return Array.from(atS, (at, i) => [
    new Date(at * 1000).toISOString().slice(0, 19),
    Math.round((airC[i] ?? NaN) * 100) / 100,
    Math.round((rh[i] ?? NaN) * 1000) / 1000,
  ]);
}
const lines = (...text: readonly string[]): string => `${text.join("\r\n")}\r\n`;

/** The same three readings, as many loggers as there are would write them: 22.5 °C 48.3 %, 22.6 48.1, 21 50. */
const same = [
  ["2025-07-22T08:00:00", 22.5, 0.483],
  ["2025-07-22T08:05:00", 22.6, 0.481],
  ["2025-07-22T20:10:00", 21, 0.5],
];
const files: Record<string, string> = {
  "commas, ISO 8601 in UTC": lines(
    "time,temperature,humidity",
    "2025-07-22T08:00:00Z,22.5,48.3",
    "2025-07-22T08:05:00Z,22.6,48.1",
    "2025-07-22T20:10:00Z,21.0,50",
  ),
  "an offset in the text": lines(
    "time,temperature,humidity",
    "2025-07-22T10:00:00+02:00,22.5,48.3",
    "2025-07-22T10:05:00+0200,22.6,48.1",
    "2025-07-22T22:10:00+02,21.0,50",
  ),
  "semicolons, decimal comma, day first, the clock of the place": lines(
    "Datum;Temperatur [°C];rel. Feuchte [%]",
    "22.07.2025 09:00;22,5;48,3",
    "22.07.2025 09:05;22,6;48,1",
    "22.07.2025 21:10;21,0;50,0",
  ),
  "tabs, date and time apart, 12 hours": lines(
    "Date\tTime\tTemp C\tRH",
    "7/22/2025\t9:00:00 AM\t22.5\t48.3",
    "7/22/2025\t9:05:00 AM\t22.6\t48.1",
    "7/22/2025\t9:10:00 PM\t21\t50",
  ),
  "bars, °F, humidity as a fraction": lines(
    "when|temp (°F)|humidity",
    "2025-07-22 09:00|72.5|0.483",
    "2025-07-22 09:05|72.68|0.481",
    "2025-07-22 21:10|69.8|0.5",
  ),
  "spaces in columns": lines(
    "date       time     T     RH",
    "2025-07-22 09:00  22.5  48.3",
    "2025-07-22 09:05  22.6  48.1",
    "2025-07-22 21:10  21.0  50.0",
  ),
  "spaces, am and pm apart": lines(
    "2025-07-22 9:00 AM 22.5 48.3",
    "2025-07-22 9:05 AM 22.6 48.1",
    "2025-07-22 9:10 PM 21.0 50.0",
  ),
  "epoch seconds": lines(
    "timestamp,t,rh",
    "1753171200,22.5,48.3",
    "1753171500,22.6,48.1",
    "1753215000,21,50",
  ),
  "epoch milliseconds, no head": lines(
    "1753171200000;22.5;48.3",
    "1753171500000;22.6;48.1",
    "1753215000000;21;50",
  ),
  "quotes, a name with a comma, a comma as decimal mark in quotes": lines(
    '"No","Time, local","Temperature (C)","Humidity, %"',
    '"1","2025/07/22 09:00:00","22,5","48,3"',
    '"2","2025/07/22 09:05:00","22,6","48,1"',
    '"3","2025/07/22 21:10:00","21,0","50,0"',
  ),
  "a preamble, units in cells, month names": lines(
    "Logger: shed north",
    "Serial,123456",
    "Started,22 Jul 2025",
    "",
    "#,Time (GMT+01:00),Temp,Humidity,Battery",
    "1,22-Jul-2025 09:00:00,22.5 °C,48.3 %,98",
    "2,22-Jul-2025 09:05:00,22.6 °C,48.1 %,98",
    "3,22-Jul-2025 21:10:00,21.0 °C,50.0 %,97",
  ),
  "humidity before temperature, and a day of the week": lines(
    "Time;Humidity;Temperature",
    "Tue 22/07/2025 09:00;48.3;22.5",
    "Tue 22/07/2025 09:05;48.1;22.6",
    "Tue 22/07/2025 21:10;50;21",
  ),
};

describe("a logger's file is read as it is meant", () => {
  test.each(Object.entries(files))("%s", async (_, text) => expect(await readAll(text)).toEqual(same));

  test.each(["utf-16le", "utf-16be", "utf-8 with a mark", "latin"])("written as %s", async (how) => {
    const text = files["semicolons, decimal comma, day first, the clock of the place"] ?? "";
    expect(await readAll(encoded(text, how))).toEqual(same);
    expect((await guess(encoded(text, how))).plan.names[1]).toBe("Temperatur [°C]");
  });

  test("old line ends, unix line ends and a last line without one", async () => {
    const text = files["commas, ISO 8601 in UTC"] ?? "";
    for (const end of ["\r", "\n", "\r\n"]) {
      expect(await readAll(text.replaceAll("\r\n", end))).toEqual(same);
      expect(await readAll(text.replaceAll("\r\n", end).slice(0, -end.length))).toEqual(same);
    }
  });

  test("a dew point stands in for the humidity", async () => {
    // 20 °C with a dew point of 9.27 °C is 50 %: the printed table of dew points.
    const text = lines(
      "time,temp C,dew point C",
      "2025-07-22T08:00:00Z,20,9.27",
      "2025-07-22T09:00:00Z,25,13.86",
    );
    const read = await readAll(text);
    for (const [, , rh] of read) expect(rh).toBeCloseTo(0.5, 2);
  });

  test.each([
    ["hPa", "1013.2"],
    ["kPa", "101.32"],
    ["Pa", "101320"],
    ["inHg", "29.92"],
  ])("a pressure in %s", async (unit, value) => {
    const row = (minute: number): string => `2025-07-22T08:${10 + minute}:00Z,20,50,${value}`;
    for (const head of [`time,temp C,RH %,pressure ${unit}`, "time,temp C,RH %,pressure"]) {
      const text = lines(head, row(0), row(1), row(2));
      const { plan, doubts } = await guess(text);
      expect(plan.pressure?.unit).toBe(unit);
      expect(doubts.includes("pressure-unit")).toBe(!head.includes(unit));
      const result = await readAirCsv(new Blob([text]), plan, { onBad: "refuse", nowMs });
      if (!result.ok) throw new Error(result.why);
      expect(result.air.pressurePa?.[0]).toBeCloseTo(101_320, -1);
    }
  });
});

describe("the order of day and month", () => {
  const rows = (...dates: readonly string[]): string =>
    lines("time,temp C,RH %", ...dates.map((date) => `${date} 08:00,22.5,48.3`));

  test("is told by a day over 12, early or late", async () => {
    expect(await guess(rows("05/06/2025", "13/06/2025"))).toMatchObject({
      openDate: null,
      plan: { time: { order: "dmy" } },
    });
    expect(await guess(rows("05/06/2025", "06/13/2025"))).toMatchObject({
      openDate: null,
      plan: { time: { order: "mdy" } },
    });
  });

  test("is asked where none is, with what the date would be either way", async () => {
    const { openDate } = await guess(rows("05/05/2025", "05/06/2025", "06/06/2025"));
    expect(openDate?.text).toBe("05/06/2025 08:00");
    expect(openDate?.readings.map(({ order, atS }) => [order, new Date(atS * 1000).toISOString()])).toEqual([
      ["dmy", "2025-06-05T07:00:00.000Z"],
      ["mdy", "2025-05-06T07:00:00.000Z"],
    ]);
  });

  test("of two-digit years may be three", async () => {
    const open = await guess(rows("05/06/07", "06/06/07"));
    expect(open.openDate?.readings.map(({ order }) => order)).toEqual(["dmy", "mdy", "ymd"]);
    const late = await guess(rows("25-06-07", "25-06-30"));
    expect(late.openDate?.readings.map(({ order }) => order)).toEqual(["dmy", "ymd"]);
    const settled = await guess(rows("99-06-07", "99-06-30"));
    expect(settled).toMatchObject({ openDate: null, plan: { time: { order: "ymd" } } });
  });

  test("is found in a large file, though its first thousand lines leave it open", async () => {
    const day = (n: number): string => new Date(Date.UTC(2025, 0, 3, 0, n * 5)).toISOString();
    const text = lines(
      "time,temp C,RH %",
      ...Array.from({ length: 20_000 }, (_, n) => {
        const iso = day(n);
        return `${iso.slice(8, 10)}/${iso.slice(5, 7)}/${iso.slice(0, 4)} ${iso.slice(11, 16)},22.5,48.3`;
      }),
    );
    expect(await guess(text.slice(0, 60_000))).toMatchObject({
      openDate: { text: expect.stringContaining("/01/2025") },
    });
    expect(await guess(text)).toMatchObject({ openDate: null, plan: { time: { order: "dmy" } } });
  });
});

describe("what cannot be told is said", () => {
  test("an empty file, and one without a reading", async () => {
    expect(await guessAirCsv(new Blob([]), { zone })).toEqual({ ok: false, why: "empty" });
    expect(await guessAirCsv(new Blob(["once upon a time"]), { zone })).toEqual({
      ok: false,
      why: "no-rows",
    });
  });

  test("units that neither head nor cells tell are taken from the numbers, and told as doubts", async () => {
    const warm = await guess(lines("x,y,z", "2025-07-22 08:00,71.5,48.3", "2025-07-22 08:05,71.9,48.1"));
    expect(warm.plan).toMatchObject({ temp: { column: 1, unit: "F" }, rh: { column: 2, unit: "percent" } });
    expect(warm.doubts).toEqual(["temp-column", "rh-column", "temp-unit"]);
  });
});

test("a preview tells of each row what the plan makes of it, and goes on while the plan has gaps", async () => {
  const text = lines("time,temp C,RH %", "2025-07-22 08:00,21.5,48.3", "2025-07-22 08:05,warm,48.1");
  const file = new Blob([text]);
  const { plan } = await guess(text);
  const rows = await previewAirCsv(file, plan, { nowMs, mostRows: 10 });
  expect(rows.map(({ line, result }) => [line, result?.ok ?? null])).toEqual([
    [1, null],
    [2, true],
    [3, false],
  ]);
  const gaps = await previewAirCsv(file, { ...plan, temp: null }, { nowMs, mostRows: 2 });
  expect(gaps.map(({ cells, result }) => [cells.length, result])).toEqual([
    [3, null],
    [3, null],
  ]);
});

test("a delimiter that the person has said is kept", async () => {
  const text = lines("a;b;c", "2025-07-22 08:00;21.5;48.3", "2025-07-22 08:05;21.5;48.1");
  expect((await guess(text)).plan.delimiter).toBe(";");
  const said = await guessAirCsv(new Blob([text]), { zone, delimiter: ";" });
  expect(said.ok && said.plan.delimiter).toBe(";");
  expect(await guessAirCsv(new Blob([text]), { zone, delimiter: " " })).toEqual({
    ok: false,
    why: "no-rows",
  });
});

function encoded(text: string, how: string): Uint8Array<ArrayBuffer> {
  if (how === "utf-8 with a mark")
    return new Uint8Array([0xef, 0xbb, 0xbf, ...new TextEncoder().encode(text)]);
  if (how === "latin") return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const bytes = new Uint8Array(2 + 2 * text.length);
  const view = new DataView(bytes.buffer);
  for (const [i, letter] of Array.from(`\ufeff${text}`).entries())
    view.setUint16(2 * i, letter.charCodeAt(0), how === "utf-16le");
  return bytes;
}
