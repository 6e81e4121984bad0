import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../tests/truth/bluetooth.json" with { type: "json" };
import type { SensorFrame } from "./bluetoothFrames.ts";
import {
  batteryShare,
  humidityShare,
  pressurePa,
  temperatureC,
  thermometer,
  weight,
} from "./bluetoothFrames.ts";

const viewOf = (bytes: readonly number[]): DataView => new DataView(Uint8Array.from(bytes).buffer);
const hex = (bytes: readonly number[]): string =>
  bytes.map((byte) => byte.toString(16).padStart(2, "0")).join(" ");
type Row = { readonly bytes: readonly number[]; readonly is?: unknown; readonly why?: string };

/** A clock as text, so that the table can be read. */
function shown(frame: SensorFrame<unknown>): unknown {
  if (!frame.ok || typeof frame.value !== "object" || frame.value === null) return frame;
  const { clockMs, ...rest } = frame.value as { clockMs: number | null };
  return {
    ok: true,
    value: { ...rest, clock: clockMs === null ? null : new Date(clockMs).toISOString().replace(".000", "") },
  };
}

describe.each([
  ["temperature", temperatureC, truth.temperatureC],
  ["humidity", humidityShare, truth.humidityShare],
  ["pressure", pressurePa, truth.pressurePa],
  ["battery level", batteryShare, truth.batteryShare],
  ["weight", weight, truth.weight],
  ["thermometer", thermometer, truth.thermometer],
] as const)("a frame of %s", (_, read, rows: readonly Row[]) => {
  test.each(rows.map((row) => ({ ...row, hex: hex(row.bytes) })))(
    "$hex says $is$why",
    ({ bytes, is, why }) => {
      const wanted = is === undefined ? { ok: false, why } : { ok: true, value: is };
      const frame = shown(read(viewOf(bytes)));
      if (typeof is === "number") expect(frame).toEqual({ ok: true, value: expect.closeTo(is, 9) });
      else if (typeof is === "object" && is !== null && "massG" in is)
        expect(frame).toEqual({ ok: true, value: { ...is, massG: expect.closeTo(Number(is.massG), 6) } });
      else expect(frame).toEqual(wanted);
    },
  );
});

test("any bytes at all give a number that can be, or a reason", () =>
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 255 }), { maxLength: 20 }), (bytes) => {
      for (const read of [temperatureC, humidityShare, pressurePa, batteryShare]) {
        const frame = read(viewOf(bytes));
        if (frame.ok) expect(Number.isFinite(frame.value)).toBe(true);
      }
      const heavy = weight(viewOf(bytes));
      if (heavy.ok) expect(heavy.value.massG).toBeGreaterThanOrEqual(0);
      const warm = thermometer(viewOf(bytes));
      if (warm.ok) expect(warm.value.tempC).toBeGreaterThanOrEqual(-273.15);
    }),
    { numRuns: 200 },
  ));

test("every temperature and humidity a sensor can send comes back as it was sent", () =>
  fc.assert(
    fc.property(
      fc.integer({ min: -27_315, max: 32_767 }),
      fc.integer({ min: 0, max: 10_000 }),
      (hundredths, share) => {
        const bytes = new DataView(new ArrayBuffer(2));
        bytes.setInt16(0, hundredths, true);
        expect(temperatureC(bytes)).toEqual({ ok: true, value: hundredths / 100 });
        bytes.setUint16(0, share, true);
        expect(humidityShare(bytes)).toEqual({ ok: true, value: share / 10_000 });
      },
    ),
    { numRuns: 200 },
  ));
