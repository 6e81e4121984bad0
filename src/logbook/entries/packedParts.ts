import { z } from "zod";
import { packedFault } from "./bodyFaults.ts";
import { withRules } from "./bodyParts.ts";
import { fieldOf, type FieldKey } from "./fields.ts";
import { ranges } from "./ranges.ts";

const [, mostInBlock] = fieldOf("readings").stored;
const daySeconds = 86_400;

/** A logger's list of values. One pass over it, not a check object per value: a rack reads tens of thousands. */
export function packed(key: FieldKey) {
  const [low, high] = fieldOf(key).stored;
  return z.custom<readonly number[]>(
    (list) =>
      Array.isArray(list) &&
      list.length <= mostInBlock &&
      list.every((value) => typeof value === "number" && value >= low && value <= high),
    { message: `at most ${mostInBlock} numbers from ${low} to ${high}` },
  );
}

/** Whole seconds after the entry's own time, each later than the one before, within a day. */
export const packedSeconds = z.custom<readonly number[]>(
  (list) =>
    Array.isArray(list) &&
    list.length > 0 &&
    list.length <= mostInBlock &&
    list.every(
      (value, i) => Number.isInteger(value) && value > (i === 0 ? -1 : list[i - 1]) && value <= daySeconds,
    ),
  { message: "rising whole seconds within a day" },
);

type Block = { readonly afterS: readonly number[] };

/** A logger's block: `afterS` and the lists named, all of one length. Each list is named by its row. */
export function block<S extends z.ZodType<Block>>(
  schema: S,
  keys: readonly (FieldKey & keyof z.output<S>)[],
): S {
  const listsOf = (body: object) =>
    keys.map((field) => ({
      field,
      list: (body as { readonly [F in FieldKey]?: readonly number[] })[field],
      range: ranges[field],
    }));
  const even = schema.refine(
    (body) => listsOf(body).every(({ list }) => list === undefined || list.length === body.afterS.length),
    { message: "lists of one length" },
  );
  return withRules(even, {
    also: (body) =>
      packedFault({ afterS: (body as unknown as Block).afterS, values: listsOf(body as object) }),
  });
}
