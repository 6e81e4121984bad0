import { z } from "zod";
import type { Fault } from "./bodyFaults.ts";
import { fieldOf, type FieldKey } from "./fields.ts";
import type { NumberRange } from "./ranges.ts";

/** Ranges that hang on another figure of the same body; they stand before those of the table. */
export type BodyLimits = { readonly [K in FieldKey]?: NumberRange };

/** What one type asks of its body beyond its parts. */
export type BodyRules<B> = {
  readonly limits?: (body: B) => BodyLimits;
  /** Asked last: what lies between the parts. */
  readonly also?: (body: B) => Fault;
};

/** What is asked of a part before it is written, beyond what its schema lets be read. */
export type Tight =
  | { readonly ask: "number" | "count"; readonly key: FieldKey }
  /** Not blank; `as` is the name its refusal gives it where that is not its own key. */
  | { readonly ask: "words"; readonly as: string | undefined }
  | { readonly ask: "body"; readonly rules: BodyRules<never> };

export const tight = z.registry<Tight>();

/** A body as it is read: every part of it for reading only. */
export type Body<S extends z.ZodType> = Still<z.output<S>>;
export type Bodies<S extends Readonly<Record<string, z.ZodType>>> = { readonly [T in keyof S]: Body<S[T]> };
type Still<T> = T extends object ? { readonly [K in keyof T]: Still<T[K]> } : T;

/** The figure of a row: read within its stored range, written within its entry range. */
export const numberOf = (key: FieldKey) => storedNumber(key).register(tight, { ask: "number", key });

/** A figure whose entry range is not its own, such as one part of a direction: `also` must ask about it. */
export function storedNumber(key: FieldKey): z.ZodNumber {
  const { stored, whole } = fieldOf(key);
  return (whole === true ? z.int() : z.number()).min(stored[0]).max(stored[1]);
}

/** A list whose length is the figure of a row. */
export const listOf = <T extends z.ZodType>(key: FieldKey, part: T) =>
  z.array(part).max(fieldOf(key).stored[1]).register(tight, { ask: "count", key });

/** Words that may not be blank when they are written. */
export const filled = (text: z.ZodString, as?: string) => text.clone().register(tight, { ask: "words", as });

/** What stands in a body unless the key is left out; null for a key that must be there. */
export const mayBeLeftOut = (schema: z.core.$ZodType): z.core.$ZodType | null =>
  schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional ? schema.unwrap() : null;

export const withRules = <S extends z.ZodType>(schema: S, rules: BodyRules<Body<S>>): S => {
  tight.add(schema, { ask: "body", rules });
  return schema;
};

// The limits of words and lists are wide on purpose: they keep nonsense out of the log.
export const id = z.string().min(1).max(64);
export const short = z.string().min(1).max(200);
export const label = z.string().max(200);
export const words = z.string().max(4000);
export const photos = z.array(id).max(50).optional();
export const note = words.optional();
export const ids = z.array(id).max(200);
export const flag = z.boolean().optional();
export const currency = z.string().max(20).optional();
export const energy = { energyKWh: numberOf("energyKWh").optional(), fuelKg: numberOf("fuelKg").optional() };

// The log keeps lists of its own: a word once written is read for ever, whatever the tables of the trade hold.
export const coatKind = z.enum(["prime", "intermediate", "backup", "seal"]);
export const geometry = z.enum(["open", "corner", "recess", "blind"]);
export const airClass = z.enum(["still", "draught", "room-fan", "rack-fan", "strong", "tunnel"]);
export const stuccoFamily = z.enum(["fused-silica", "aluminosilicate", "zircon", "quartz"]);
