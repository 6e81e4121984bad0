import type { AirRow } from "./airCsvRow.ts";

/** Readings in rows of numbers, in order of time, no moment twice. */
export type PackedAir = {
  readonly count: number;
  /** Epoch seconds. */
  readonly atS: Float64Array;
  readonly airC: Float64Array;
  /** A fraction, over water also in frost, as a sensor tells it. */
  readonly rh: Float64Array;
  /** Pa where `hasPressure` is 1, else 0; both null where no reading told one. */
  readonly pressurePa: Float64Array | null;
  readonly hasPressure: Uint8Array | null;
};

export type Merged = {
  /** Lines left out because an earlier one of the file tells the same moment. */
  readonly inFile: number;
  /** Of those, the ones that tell another air: over 0.2 K or 2 % off. */
  readonly differing: number;
  /** Lines left out because that moment is already stored. */
  readonly stored: number;
  /** False where the file was not in order of time, either way. */
  readonly wasInOrder: boolean;
};

/** Rows as they come in. Grows by doubling: 200 000 rows are no 200 000 objects. */
export type AirPile = {
  readonly add: (row: AirRow) => void;
  readonly pack: (storedS: Float64Array) => Packed;
};
export type Packed = { readonly air: PackedAir; readonly merged: Merged };

const width = 4;

export function airPile(): AirPile {
  let numbers = new Float64Array(width * 1024);
  let count = 0;
  let hasAny = false;
  return {
    add: ({ atS, airC, rh, pressurePa }) => {
      if ((count + 1) * width > numbers.length) {
        const larger = new Float64Array(numbers.length * 2);
        larger.set(numbers);
        numbers = larger;
      }
      numbers.set([atS, airC, rh, pressurePa ?? 0], count * width);
      hasAny ||= pressurePa !== null;
      count += 1;
    },
    pack: (storedS) => packed(numbers.subarray(0, count * width), { hasAny, storedS }),
  };
}

function packed(rows: Float64Array, { hasAny, storedS }: { hasAny: boolean; storedS: Float64Array }): Packed {
  const count = rows.length / width;
  const at = (index: number, field: number): number => rows[index * width + field] ?? 0;
  const { order, wasInOrder } = inTime(count, (index) => at(index, 0));
  const stored = new Set(storedS);
  const kept: number[] = [];
  const merged = { inFile: 0, differing: 0, stored: 0 };
  for (const index of order) {
    const last = kept.at(-1);
    if (stored.has(at(index, 0))) merged.stored += 1;
    else if (last !== undefined && at(last, 0) === at(index, 0)) {
      merged.inFile += 1;
      const isFar = Math.abs(at(last, 1) - at(index, 1)) > 0.2 || Math.abs(at(last, 2) - at(index, 2)) > 0.02;
      if (isFar) merged.differing += 1;
    } else kept.push(index);
  }
  const column = (field: number): Float64Array => Float64Array.from(kept, (index) => at(index, field));
  const air: PackedAir = {
    count: kept.length,
    atS: column(0),
    airC: column(1),
    rh: column(2),
    pressurePa: hasAny ? column(3) : null,
    hasPressure: hasAny ? Uint8Array.from(kept, (index) => (at(index, 3) > 0 ? 1 : 0)) : null,
  };
  return { air, merged: { ...merged, wasInOrder } };
}

/** Places in order of time; of one moment the earlier line first. A file in order, up or down, is told as such. */
function inTime(
  count: number,
  atOf: (index: number) => number,
): { order: readonly number[]; wasInOrder: boolean } {
  const places = Array.from({ length: count }, (_, i) => i);
  const rises = places.every((i) => i === 0 || atOf(i - 1) <= atOf(i));
  if (rises) return { order: places, wasInOrder: true };
  const falls = places.every((i) => i === 0 || atOf(i - 1) >= atOf(i));
  return { order: places.sort((a, b) => atOf(a) - atOf(b) || a - b), wasInOrder: falls };
}
