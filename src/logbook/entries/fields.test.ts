import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { bodySchemas } from "./allBodies.ts";
import { mayBeLeftOut, tight } from "./bodyParts.ts";
import { fieldOf, fields, type FieldKey } from "./fields.ts";

const keys = Object.keys(fields) as FieldKey[];

test("the table imports nothing, so forms and sums read it without the schemas", () => {
  expect(readFileSync("src/logbook/entries/fields.ts", "utf8")).not.toMatch(/\bimport\b.*from/);
  const imports = readFileSync("src/logbook/entries/ranges.ts", "utf8").match(/from ".*"/g);
  expect(imports).toEqual(['from "./fields.ts"']);
});

test("what may be written can be read", () => {
  // The entry range of a direction is that of its length, not of its parts.
  const narrow = keys.filter((key) => {
    const { stored, entry } = fieldOf(key);
    return key !== "up" && (entry[0] < stored[0] || entry[1] > stored[1]);
  });
  expect(narrow).toEqual([]);
});

/** The rows that some part of a schema is written by. */
function rowsOf(schema: z.core.$ZodType): readonly FieldKey[] {
  const asked = tight.get(schema as z.ZodType);
  const own = asked?.ask === "number" || asked?.ask === "count" ? [asked.key] : [];
  return [...own, ...partsOf(schema).flatMap(rowsOf)];
}
function partsOf(schema: z.core.$ZodType): readonly z.core.$ZodType[] {
  const inner = mayBeLeftOut(schema);
  if (inner !== null) return [inner];
  if (schema instanceof z.ZodNullable) return [schema.unwrap()];
  if (schema instanceof z.ZodObject) return Object.values(schema.shape);
  if (schema instanceof z.ZodArray) return [schema.element];
  if (schema instanceof z.ZodTuple) return schema.def.items;
  return schema instanceof z.ZodDiscriminatedUnion ? schema.options : [];
}

test("every row is asked of some body", () => {
  const asked = new Set(Object.values<z.ZodType>(bodySchemas).flatMap(rowsOf));
  // Asked of a whole body: the length of a direction, and how many readings a logger's block holds.
  const ofWholes: readonly FieldKey[] = ["up", "readings"];
  expect(keys.filter((key) => !asked.has(key) && !ofWholes.includes(key))).toEqual([]);
});

test("no two types share a schema that carries rules of one of them", () => {
  const ruled = Object.values<z.ZodType>(bodySchemas).filter((schema) => tight.get(schema)?.ask === "body");
  expect(ruled.length).toBeGreaterThan(10);
  expect(new Set(ruled).size).toBe(ruled.length);
});
