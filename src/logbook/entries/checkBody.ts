import { z } from "zod";
import { bodySchemas } from "./allBodies.ts";
import { number, type Fault } from "./bodyFaults.ts";
import { mayBeLeftOut, tight, type BodyRules, type BodyLimits } from "./bodyParts.ts";
import type { EntryBodies, EntryType } from "./entry.ts";
import { fieldName, type FieldKey } from "./fields.ts";
import { entryRange } from "./ranges.ts";

/** What is wrong with a body by itself, whatever came before: a blank name, a number out of range. */
export function bodyFault<T extends EntryType>(type: T, body: EntryBodies[T]): Fault {
  let check = checks.get(type);
  if (check === undefined) {
    check = checkOf(bodySchemas[type], type) ?? fine;
    checks.set(type, check);
  }
  return check(body, {});
}

type Check = (value: unknown, limits: BodyLimits) => Fault;
const fine: Check = () => null;

/** Made once for each type: a room's log has thousands of lines. */
const checks = new Map<EntryType, Check>();

/**
 * The entry ranges along a schema: the first fault in the order of its keys, then what its rules say of the whole. Null
 * where it asks nothing. `name` is the key the value stands under.
 */
function checkOf(schema: z.core.$ZodType, name: string): Check | null {
  const asked = tight.get(schema as z.ZodType);
  switch (asked?.ask) {
    case "number":
      return numberCheck(asked.key);
    case "words":
      return wordsCheck(asked.as ?? name);
    case "count":
      return all([countCheck(asked.key), partsCheck(schema, name)]);
    case "body":
      return ruled(partsCheck(schema, name) ?? fine, asked.rules);
    case undefined:
      return partsCheck(schema, name);
  }
}

function partsCheck(schema: z.core.$ZodType, name: string): Check | null {
  const inner = mayBeLeftOut(schema);
  if (inner !== null) return whereThere(checkOf(inner, name));
  // Each check lets null pass but that of words, for which null is as good as blank.
  if (schema instanceof z.ZodNullable) return checkOf(schema.unwrap(), name);
  if (schema instanceof z.ZodObject) return objectCheck(schema.shape);
  if (schema instanceof z.ZodArray) return eachCheck(checkOf(schema.element, name));
  if (schema instanceof z.ZodTuple) return all(schema.def.items.map((part, i) => at(i, checkOf(part, name))));
  if (schema instanceof z.ZodDiscriminatedUnion) return unionCheck(schema);
  return null;
}

const numberCheck = (key: FieldKey): Check => {
  const [name, range] = [fieldName(key), entryRange(key)];
  return (value, limits) => number(name, value as number | null | undefined, limits[key] ?? range);
};

const countCheck = (key: FieldKey): Check => {
  const [name, range] = [fieldName(key), entryRange(key)];
  return (list) => (Array.isArray(list) ? number(name, list.length, range) : null);
};

const wordsCheck =
  (field: string): Check =>
  (value) =>
    typeof value === "string" && value.trim() !== "" ? null : { code: "missing", field };

const ruled =
  (parts: Check, { limits, also }: BodyRules<never>): Check =>
  (body) =>
    parts(body, limits?.(body as never) ?? {}) ?? also?.(body as never) ?? null;

function all(checks: readonly (Check | null)[]): Check | null {
  const asking = checks.filter((check) => check !== null);
  if (asking.length === 0) return null;
  return (value, limits) => {
    for (const check of asking) {
      const fault = check(value, limits);
      if (fault !== null) return fault;
    }
    return null;
  };
}

const whereThere = (check: Check | null): Check | null =>
  check && ((value, limits) => (value === undefined ? null : check(value, limits)));

const at = (key: PropertyKey, check: Check | null): Check | null =>
  check &&
  ((value, limits) =>
    typeof value === "object" && value !== null
      ? check((value as Readonly<Record<PropertyKey, unknown>>)[key], limits)
      : null);

const objectCheck = (shape: Readonly<Record<string, z.core.$ZodType>>): Check | null =>
  all(Object.entries(shape).map(([key, part]) => at(key, checkOf(part, key))));

const eachCheck = (check: Check | null): Check | null =>
  check &&
  ((list, limits) => {
    for (const value of Array.isArray(list) ? list : []) {
      const fault = check(value, limits);
      if (fault !== null) return fault;
    }
    return null;
  });

function unionCheck(union: z.ZodDiscriminatedUnion): Check {
  const key = union.def.discriminator;
  const options = new Map<unknown, Check | null>();
  for (const option of union.options) {
    if (!(option instanceof z.ZodObject)) continue;
    const kind: unknown = option.shape[key];
    if (kind instanceof z.ZodLiteral)
      for (const value of kind.values) options.set(value, checkOf(option, String(value)));
  }
  const kindOf = (value: unknown): unknown =>
    typeof value === "object" && value !== null
      ? (value as Readonly<Record<string, unknown>>)[key]
      : undefined;
  return (value, limits) => options.get(kindOf(value))?.(value, limits) ?? null;
}
