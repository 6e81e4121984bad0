import { z } from "zod";
import { bodySchemas } from "./allBodies.ts";
import { mayBeLeftOut } from "./bodyParts.ts";
import type { EntryType } from "./entry.ts";

/** The keys a body must have to be of its type: those its schema does not let it leave out. */
function neededKeys(schema: z.core.$ZodType): readonly string[] {
  if (schema instanceof z.ZodUnion) {
    const [first = [], ...others] = schema.options.map(neededKeys);
    return first.filter((key) => others.every((keys) => keys.includes(key)));
  }
  if (!(schema instanceof z.ZodObject)) return [];
  return Object.entries<z.core.$ZodType>(schema.shape)
    .filter(([, part]) => mayBeLeftOut(part) === null)
    .map(([key]) => key);
}

/**
 * The first key the body lacks to be of this type; null when it has them all. So a correction can't put one type's words
 * in another's place.
 */
export function lackingKey(type: EntryType, body: object): string | null {
  return neededKeys(bodySchemas[type]).find((key) => !Object.hasOwn(body, key)) ?? null;
}
