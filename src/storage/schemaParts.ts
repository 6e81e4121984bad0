import { z } from "zod";

// Limits are wide on purpose: they keep nonsense out of the log, the rules judge what is sensible.
export const id = z.string().min(1).max(64);
export const short = z.string().min(1).max(200);
export const words = z.string().max(4000);
export const tempC = z.number().min(-60).max(2500);
export const share = z.number().min(0).max(1);
export const seconds = z.number().min(0).max(86_400);
export const minutes = z.number().min(0).max(100_000);
/** A number of things or an amount, whatever its unit. */
export const upTo = (most: number) => z.number().min(0).max(most);
export const count = z.int().min(1).max(200);
export const step = z.int().min(0).max(199);
export const photos = z.array(id).max(50).optional();
export const note = words.optional();
export const ids = z.array(id).max(200);
export const flag = z.boolean().optional();
export const price = upTo(1e7).optional();
export const currency = z.string().max(20).optional();
export const kind = z.enum(["prime", "intermediate", "backup", "seal"]);
export const energy = { energyKWh: upTo(1e6).optional(), fuelKg: upTo(1e6).optional() };

const mostInBlock = 10_000;

/** A logger's list of values. One pass over it, not a check object per value: a rack reads tens of thousands. */
export const packed = ({ low, high }: { readonly low: number; readonly high: number }) =>
  z.custom<readonly number[]>(
    (list) =>
      Array.isArray(list) &&
      list.length <= mostInBlock &&
      list.every((value) => typeof value === "number" && value >= low && value <= high),
    { message: `at most ${mostInBlock} numbers from ${low} to ${high}` },
  );

/** Whole seconds after the entry's own time, each later than the one before, within a day. */
export const packedSeconds = z.custom<readonly number[]>(
  (list) =>
    Array.isArray(list) &&
    list.length > 0 &&
    list.length <= mostInBlock &&
    list.every(
      (value, i) => Number.isInteger(value) && value > (i === 0 ? -1 : list[i - 1]) && value <= 86_400,
    ),
  { message: "rising whole seconds within a day" },
);

export const sameLength = (...lists: readonly (readonly unknown[] | undefined)[]): boolean =>
  lists.every((list) => list === undefined || list.length === lists[0]?.length);

export const uneven = { message: "lists of one length" };
