import * as fc from "fast-check";
import { expect, test } from "vitest";
import { guessAirCsv } from "./guessAirCsv.ts";
import { readAirCsv } from "./readAirCsv.ts";

const nowMs = Date.UTC(2026, 5, 1);
const lines = (...text: readonly string[]): string => `${text.join("\r\n")}\r\n`;

const letters = {
  ymd: ["y", "m", "d"],
  dmy: ["d", "m", "y"],
  mdy: ["m", "d", "y"],
} as const;

test("whatever separator, decimal mark and order a file is written in, it is read back", () =>
  fc.assert(
    fc.asyncProperty(
      fc.record({
        delimiter: fc.constantFrom(",", ";", "\t", "|"),
        comma: fc.boolean(),
        date: fc.constantFrom("ymd", "dmy", "mdy"),
        mark: fc.constantFrom("-", "/", "."),
        apart: fc.boolean(),
        preamble: fc.integer({ min: 0, max: 3 }),
        rows: fc.array(
          fc.tuple(
            fc.integer({ min: 0, max: 500_000 }),
            fc.integer({ min: -99, max: 450 }),
            fc.integer({ min: 50, max: 999 }),
          ),
          { minLength: 3, maxLength: 20 },
        ),
      }),
      async ({ delimiter, comma, date, mark, apart, preamble, rows }) => {
        const quote = comma && delimiter === "," ? '"' : "";
        const number = (tenths: number): string =>
          quote + (tenths / 10).toFixed(1).replace(".", comma ? "," : ".") + quote;
        const text = lines(
          ...Array.from({ length: preamble }, (_, i) => `Note ${i}`),
          ["Zeit", ...(apart ? ["Uhr"] : []), "Temperatur °C", "Feuchte %"].join(delimiter),
          ...rows.map(([minute, temp, rh]) => {
            const iso = new Date(Date.UTC(2024, 0, 13, 0, minute)).toISOString();
            const part = { y: iso.slice(0, 4), m: iso.slice(5, 7), d: iso.slice(8, 10) };
            const day = letters[date].map((one) => part[one]).join(mark);
            return [`${day}${apart ? delimiter : " "}${iso.slice(11, 16)}`, number(temp), number(rh)].join(
              delimiter,
            );
          }),
        );
        const guess = await guessAirCsv(new Blob([text]), { zone: "Europe/Lisbon" });
        if (!guess.ok) throw new Error(`${guess.why}\n${text}`);
        const { plan, openDate } = guess;
        const order = date;
        if (openDate === null) expect(plan.time).toMatchObject({ order });
        const time = plan.time?.kind === "text" ? { ...plan.time, order, zone: "UTC" } : plan.time;
        const result = await readAirCsv(new Blob([text]), { ...plan, time }, { onBad: "refuse", nowMs });
        if (!result.ok) throw new Error(`${JSON.stringify(result)}\n${text}`);
        const wanted = new Map<number, readonly [number, number]>();
        for (const [minute, temp, rh] of rows) {
          const atS = Date.UTC(2024, 0, 13, 0, minute) / 1000;
          if (!wanted.has(atS)) wanted.set(atS, [temp / 10, rh / 1000]);
        }
        const { atS, airC, rh } = result.air;
        const times = [...wanted.keys()].toSorted((a, b) => a - b);
        expect([...atS]).toEqual(times);
        expect([...airC].map((value) => Math.round(value * 10))).toEqual(
          times.map((at) => Math.round((wanted.get(at)?.[0] ?? 0) * 10)),
        );
        expect([...rh].map((value) => Math.round(value * 1000))).toEqual(
          times.map((at) => Math.round((wanted.get(at)?.[1] ?? 0) * 1000)),
        );
      },
    ),
    { numRuns: 100 },
  ));
