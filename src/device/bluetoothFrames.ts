/*
 * Bytes of the standard Bluetooth characteristics as numbers. Formats: Bluetooth SIG, GATT Specification Supplement,
 * the sections named after each characteristic; all little-endian. Where a section was not at hand it says so.
 */

/** What a frame says, or why it says nothing. "unknown": the sensor itself says that it does not know. */
export type SensorFrame<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: "short" | "unknown" | "out-of-range" };

export type WeightFrame = {
  readonly massG: number;
  /** The scale's own clock, as if it were UTC, epoch ms; null where it tells none. */
  readonly clockMs: number | null;
};

export type ThermometerFrame = { readonly tempC: number; readonly clockMs: number | null };

/** Temperature 0x2A6E, °C: sint16 in 0.01 °C, 0x8000 "value is not known". Refuses under absolute zero. */
export function temperatureC(bytes: DataView): SensorFrame<number> {
  if (bytes.byteLength < 2) return short;
  const raw = bytes.getInt16(0, true);
  if (raw === -0x8000) return unknown;
  return raw < -27_315 ? outOfRange : told(raw / 100);
}

/** Humidity 0x2A6F as a fraction 0–1: uint16 in 0.01 %, 0xFFFF "value is not known" (the latter from memory of it). */
export function humidityShare(bytes: DataView): SensorFrame<number> {
  if (bytes.byteLength < 2) return short;
  const raw = bytes.getUint16(0, true);
  if (raw === 0xffff) return unknown;
  return raw > 10_000 ? outOfRange : told(raw / 10_000);
}

/** Pressure 0x2A6D, Pa: uint32 in 0.1 Pa. Refuses what no inhabited place has, 20–120 kPa. */
export function pressurePa(bytes: DataView): SensorFrame<number> {
  if (bytes.byteLength < 4) return short;
  const pascals = bytes.getUint32(0, true) / 10;
  return pascals < 20_000 || pascals > 120_000 ? outOfRange : told(pascals);
}

/** Battery Level 0x2A19 as a fraction 0–1: uint8 in percent. */
export function batteryShare(bytes: DataView): SensorFrame<number> {
  if (bytes.byteLength < 1) return short;
  const percent = bytes.getUint8(0);
  return percent > 100 ? outOfRange : told(percent / 100);
}

/**
 * Weight Measurement 0x2A9D: flags, uint16 in 0.005 kg or 0.01 lb, then a date (7), a user (1), body mass index and
 * height (4) where their flags stand. 0xFFFF is "measurement unsuccessful" (from memory of the Weight Scale Service).
 * The unit is 5 g at best: enough for a large shell, too coarse for the water of one coat on a small one.
 */
export function weight(bytes: DataView): SensorFrame<WeightFrame> {
  if (bytes.byteLength < 3) return short;
  const flags = bytes.getUint8(0);
  const length = 3 + (flags & 2 ? 7 : 0) + (flags & 4 ? 1 : 0) + (flags & 8 ? 4 : 0);
  if (bytes.byteLength < length) return short;
  const raw = bytes.getUint16(1, true);
  if (raw === 0xffff) return unknown;
  const massG = flags & 1 ? (raw / 100) * gramsInPound : raw * 5;
  return told({ massG, clockMs: flags & 2 ? clockMs(bytes, 3) : null });
}

/** International pound, by definition. */
const gramsInPound = 453.592_37;

/**
 * Temperature Measurement 0x2A1C: flags, a 32-bit FLOAT of IEEE 11073-20601 in °C or °F, then a date (7) and a place
 * (1) where their flags stand.
 */
export function thermometer(bytes: DataView): SensorFrame<ThermometerFrame> {
  if (bytes.byteLength < 5) return short;
  const flags = bytes.getUint8(0);
  if (bytes.byteLength < 5 + (flags & 2 ? 7 : 0) + (flags & 4 ? 1 : 0)) return short;
  const number = medicalFloat(bytes, 1);
  if (!number.ok) return number;
  const tempC = flags & 1 ? ((number.value - 32) * 5) / 9 : number.value;
  if (tempC < -273.15) return outOfRange;
  return told({ tempC, clockMs: flags & 2 ? clockMs(bytes, 5) : null });
}

/**
 * FLOAT of IEEE 11073-20601: a signed exponent of ten in the top byte, a signed mantissa below. Mantissas of exponent
 * 0 set aside: 0x7FFFFF not a number, 0x800000 not at this resolution, 0x800001 reserved, 0x7FFFFE and 0x800002
 * plus and minus infinity.
 */
function medicalFloat(bytes: DataView, at: number): SensorFrame<number> {
  const raw = bytes.getUint32(at, true);
  if (raw === 0x007fffff || raw === 0x00800000 || raw === 0x00800001) return unknown;
  if (raw === 0x007ffffe || raw === 0x00800002) return outOfRange;
  const exponent = raw >> 24;
  const mantissa = (raw << 8) >> 8;
  // Dividing by a whole power keeps 36.6 what it is.
  return told(exponent < 0 ? mantissa / 10 ** -exponent : mantissa * 10 ** exponent);
}

/** Date Time 0x2A08: year (uint16), month, day, hour, minute, second; a 0 for year, month or day is "not known". */
function clockMs(bytes: DataView, at: number): number | null {
  const year = bytes.getUint16(at, true);
  const [month = 0, day = 0, hour = 0, minute = 0, second = 0] = [2, 3, 4, 5, 6].map((i) =>
    bytes.getUint8(at + i),
  );
  if (
    year < 1582 ||
    month < 1 ||
    month > 12 ||
    day < 1 ||
    day > 31 ||
    hour > 23 ||
    minute > 59 ||
    second > 59
  )
    return null;
  return Date.UTC(year, month - 1, day, hour, minute, second);
}

const told = <T>(value: T): SensorFrame<T> => ({ ok: true, value });
const short = { ok: false, why: "short" } as const;
const unknown = { ok: false, why: "unknown" } as const;
const outOfRange = { ok: false, why: "out-of-range" } as const;
