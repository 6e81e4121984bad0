import { describe, expect, test, vi } from "vitest";
import type { AirCsvProgress } from "./airCsv/readAirCsv.ts";
import { makeAirCsvClient } from "./airCsvClient.ts";

const nowMs = Date.UTC(2027, 5, 1);
const zone = "Europe/Berlin";
const start = Date.UTC(2025, 0, 1);

/** Five-minute readings as a logger on German clocks would write them: 200 000 are not quite two years. */
function loggerFile(count: number, bad: ReadonlySet<number> = new Set()): Blob {
  const two = (value: number): string => String(value).padStart(2, "0");
  const rows = Array.from({ length: count }, (_, i) => {
    const at = new Date(start + i * 300_000);
    const date = `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()}`;
    const clock = `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}:00`;
    if (bad.has(i)) return `${date} ${clock};---;---`;
    return `${date} ${clock};${(15 + (i % 100) / 10).toFixed(1).replace(".", ",")};${(40 + (i % 40)).toFixed(1).replace(".", ",")}`;
  });
  return new Blob([["Zeit (UTC);Temperatur °C;Feuchte %", ...rows].join("\r\n")]);
}

describe("a logger's file of 200 000 lines", () => {
  test("is guessed and read in seconds, told on the way, its bad lines by number", async ({ annotate }) => {
    const client = makeAirCsvClient();
    const file = loggerFile(200_000, new Set([70_000, 199_999]));
    const guess = await client.guess(file, { zone });
    if (!guess.ok) throw new Error(guess.why);
    expect(guess).toMatchObject({
      openDate: null,
      doubts: [],
      plan: { time: { order: "dmy", zone: "+00:00" } },
    });
    const preview = await client.preview(file, guess.plan, { nowMs, mostRows: 20 });
    if (!preview.ok) throw new Error(preview.why);
    expect(preview.rows).toHaveLength(20);
    expect(preview.rows[0]).toMatchObject({ line: 1, result: null });
    expect(preview.rows[1]).toMatchObject({
      result: { ok: true, row: { atS: start / 1000, airC: 15, rh: 0.4 } },
    });
    const told: AirCsvProgress[] = [];
    const begun = performance.now();
    const result = await client.read(file, guess.plan, {
      onBad: "skip",
      nowMs,
      onProgress: (one) => told.push(one),
    });
    const tookMs = performance.now() - begun;
    if (!result.ok) throw new Error(result.why);
    expect(result.air.count).toBe(199_998);
    expect(result.air.atS[0]).toBe(start / 1000);
    expect(result.bad.first.map(({ line }) => line)).toEqual([70_002, 200_001]);
    expect(told.length).toBeGreaterThan(5);
    expect(told.at(-1)?.bytesRead).toBe(file.size);
    await annotate(`200 000 lines, ${(file.size / 1e6).toFixed(1)} MB: ${tookMs.toFixed(0)} ms`);

    // The same on a clock with summer time, every moment stored before: nothing is new.
    const time = guess.plan.time?.kind === "text" ? { ...guess.plan.time, zone } : guess.plan.time;
    const again = await client.read(file, { ...guess.plan, time }, { onBad: "skip", nowMs });
    if (!again.ok) throw new Error(again.why);
    // Two springs leave an hour out each; the clock of the file went through it.
    expect(again.bad.first.filter(({ why }) => why === "hour-left-out")).toHaveLength(24);
    const twice = await client.read(file, guess.plan, { onBad: "skip", nowMs, storedS: result.air.atS });
    expect(twice).toMatchObject({ ok: true, air: { count: 0 }, merged: { stored: 199_998 } });
  }, 60_000);

  test("is left at once when told to stop", async () => {
    const client = makeAirCsvClient();
    const file = loggerFile(100_000);
    const guess = await client.guess(file, { zone });
    if (!guess.ok) throw new Error(guess.why);
    const stop = new AbortController();
    const ended = vi.spyOn(Worker.prototype, "terminate");
    const result = await client.read(file, guess.plan, {
      onBad: "skip",
      nowMs,
      signal: stop.signal,
      onProgress: () => stop.abort(),
    });
    expect(result).toEqual({ ok: false, why: "aborted" });
    expect(ended).toHaveBeenCalledOnce();
    ended.mockRestore();
    expect(await client.guess(file, { zone, signal: AbortSignal.abort() })).toEqual({
      ok: false,
      why: "aborted",
    });
  });
});

describe("what can go wrong", () => {
  test("no file of readings is an answer", async () => {
    const client = makeAirCsvClient();
    expect(await client.guess(new Blob([]), { zone })).toEqual({ ok: false, why: "empty" });
    expect(await client.guess(new Blob(["nothing here"]), { zone })).toEqual({ ok: false, why: "no-rows" });
  });

  test("a worker that does not load, and a browser without any", async () => {
    const none = { ok: false, why: "no-worker" };
    const broken = makeAirCsvClient(() => new Worker("data:text/javascript,throw 1", { type: "module" }));
    expect(await broken.guess(new Blob(["1"]), { zone })).toEqual(none);
    const without = makeAirCsvClient(() => {
      throw new Error("no workers here");
    });
    expect(await without.guess(new Blob(["1"]), { zone })).toEqual(none);
  });
});
