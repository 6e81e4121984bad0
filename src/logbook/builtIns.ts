import { startingRecipeOf } from "../trade/startingRecipes.ts";
import type { Bucket, Recipe, Room, Shop } from "./piece.ts";

/** What is there before the first entry, so that a first coat needs no setting up. Editing one appends to its stream. */
export const firstRoomId = "first";
export const firstPrimeBucketId = "first-prime";
export const firstBackupBucketId = "first-backup";

const rooms: readonly Room[] = [
  { id: firstRoomId, name: "Drying room", altitudeM: 0, retired: false, last: null },
];
const buckets: readonly Bucket[] = [
  {
    id: firstPrimeBucketId,
    name: "Prime",
    use: "prime",
    slurry: "fused silica prime",
    retired: false,
    last: null,
  },
  {
    id: firstBackupBucketId,
    name: "Backup",
    use: "backup",
    slurry: "fused silica backup",
    retired: false,
    last: null,
  },
];

export const builtInRoomIds: readonly string[] = rooms.map(({ id }) => id);
export const builtInBucketIds: readonly string[] = buckets.map(({ id }) => id);

export const builtInRoom = (id: string): Room | null => rooms.find((room) => room.id === id) ?? null;
export const builtInBucket = (id: string): Bucket | null =>
  buckets.find((bucket) => bucket.id === id) ?? null;
export function builtInRecipe(id: string): Recipe | null {
  const recipe = startingRecipeOf(id);
  return recipe === null ? null : { ...recipe, starting: true };
}
export const builtInShop: Shop = { dryingFactor: null, morMPa: null };
