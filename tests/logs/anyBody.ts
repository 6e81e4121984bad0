import fc from "fast-check";
import { z } from "zod";
import { bodySchemas } from "../../src/logbook/entries/allBodies.ts";
import { mayBeLeftOut } from "../../src/logbook/entries/bodyParts.ts";
import type { EntryBodies, EntryType } from "../../src/logbook/entries/entry.ts";

/** For tests only: bodies of any type, made along its schema; well-shaped, most of them making little sense. */
export const anyBody = <T extends EntryType>(type: T): fc.Arbitrary<EntryBodies[T]> =>
  anyOf(bodySchemas[type], type) as fc.Arbitrary<EntryBodies[T]>;

export const ids = Array.from({ length: 12 }, (_, i) => `id${i}`);
const someText = fc.constantFrom("", "wing", "cup");
const aNumber = fc.oneof(
  fc.double({ min: -100, max: 2000, noNaN: true }),
  fc.constantFrom(0, 1, 0.5, NaN, Infinity, -1),
);
/** Lists of a logger, of one length or not. */
const someNumbers = fc.array(aNumber, { maxLength: 4 });
const someSeconds = fc
  .array(fc.integer({ min: 1, max: 20_000 }), { maxLength: 4 })
  .map((steps) => steps.map((_, i) => steps.slice(0, i).reduce((sum, step) => sum + step, 0)));

/** Values by key that meet something: a thing there is, one there is not, a place in a short list. */
const meeting: Readonly<Record<string, fc.Arbitrary<unknown> | undefined>> = {
  roomId: fc.constantFrom("first", "attic"),
  alloyId: fc.constantFrom("c87300", "unknown", "id3"),
  recipeId: fc.constantFrom("start-general", "gone"),
  stuccoId: fc.constantFrom("16-30", "80-120", "unheard"),
  step: fc.integer({ min: -1, max: 12 }),
  segment: fc.integer({ min: -1, max: 4 }),
  scaleG: fc.constantFrom(0.1, 1, 5),
  afterS: someSeconds,
};

/** The longest an id may be; other words may be longer. */
const idLetters = 64;

function anyOf(schema: z.core.$ZodType, key: string): fc.Arbitrary<unknown> {
  const inner = mayBeLeftOut(schema);
  if (inner !== null) return fc.option(anyOf(inner, key), { nil: undefined });
  if (schema instanceof z.ZodNullable) return fc.option(anyOf(schema.unwrap(), key), { nil: null });
  if (schema instanceof z.ZodObject) return anyObject(schema.shape);
  if (schema instanceof z.ZodDiscriminatedUnion)
    return fc.oneof(...schema.options.map((option) => anyOf(option, key)));
  if (schema instanceof z.ZodArray) return fc.array(anyOf(schema.element, key), { maxLength: 3 });
  if (schema instanceof z.ZodTuple) return fc.tuple(...schema.def.items.map((part) => anyOf(part, key)));
  return meetingWords(schema, key) ?? anyLeaf(schema, key);
}

const meetingWords = (schema: z.core.$ZodType, key: string): fc.Arbitrary<unknown> | undefined =>
  schema instanceof z.ZodString && schema.maxLength !== idLetters ? undefined : meeting[key];

function anyLeaf(schema: z.core.$ZodType, key: string): fc.Arbitrary<unknown> {
  if (schema instanceof z.ZodString)
    return schema.maxLength === idLetters ? fc.constantFrom(...ids) : someText;
  if (schema instanceof z.ZodNumber) return aNumber;
  if (schema instanceof z.ZodBoolean) return fc.boolean();
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodLiteral) return fc.constantFrom(...schema.values);
  if (schema instanceof z.ZodCustom) return someNumbers;
  throw new TypeError(`no values are made for ${key}`);
}

function anyObject(shape: Readonly<Record<string, z.core.$ZodType>>): fc.Arbitrary<object> {
  const parts = Object.entries(shape).map(([key, part]) => [key, anyOf(part, key)] as const);
  return fc.record(Object.fromEntries(parts));
}
