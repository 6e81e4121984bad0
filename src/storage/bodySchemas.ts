import { z } from "zod";
import type { EntryBodies, EntryType } from "../logbook/entries/entry.ts";
import { bucketSchemas } from "./bucketSchemas.ts";
import { fireSchemas } from "./fireSchemas.ts";
import { pieceSchemas } from "./pieceSchemas.ts";
import { id, words } from "./schemaParts.ts";
import { shopSchemas } from "./shopSchemas.ts";

/** What each type of entry may carry; anything more, less or beyond its limits is not an entry of ours. */
export const bodySchemas = {
  ...pieceSchemas,
  ...bucketSchemas,
  ...shopSchemas,
  ...fireSchemas,
  "entry-struck": z.strictObject({ struckId: id, reason: words, replacedBy: id.optional() }),
} satisfies { readonly [T in EntryType]: z.ZodType<EntryBodies[T]> };
