import { z } from "zod";
import { bucketBodies } from "./bucketBodies.ts";
import { id, words } from "./bodyParts.ts";
import { meltBodies, pourBodies, runBodies } from "./fireBodies.ts";
import { pieceBodies } from "./pieceBodies.ts";
import { shellFireBodies } from "./shellFireBodies.ts";
import { recipeBodies, roomBodies, shopBodies } from "./shopBodies.ts";

/** Every type of entry by the kind of stream it belongs in; a strike goes in any. */
export const bodiesByKind = {
  piece: { ...pieceBodies, ...shellFireBodies },
  room: roomBodies,
  bucket: bucketBodies,
  recipe: recipeBodies,
  shop: shopBodies,
  run: runBodies,
  melt: meltBodies,
  pour: pourBodies,
  any: { "entry-struck": z.strictObject({ struckId: id, reason: words, replacedBy: id.optional() }) },
} as const;

/** What each type of entry may carry; anything more, less or beyond its limits is not an entry of ours. */
export const bodySchemas = {
  ...bodiesByKind.piece,
  ...bodiesByKind.room,
  ...bodiesByKind.bucket,
  ...bodiesByKind.recipe,
  ...bodiesByKind.shop,
  ...bodiesByKind.run,
  ...bodiesByKind.melt,
  ...bodiesByKind.pour,
  ...bodiesByKind.any,
};
