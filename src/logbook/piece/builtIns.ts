import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import type { Bucket, Recipe, Room, Shop } from "./piece.ts";

/** What is there before the first entry, so that a first coat needs no setting up. Editing one appends to its stream. */
export const firstRoomId = "first";
export const firstPrimeBucketId = "first-prime";
export const firstBackupBucketId = "first-backup";

const rooms: readonly Room[] = [
  { id: firstRoomId, name: "Drying room", altitudeM: 0, retired: false, last: null },
];
/** A bucket nobody has read, mixed or looked at yet. */
export const unusedBucket = {
  retired: false,
  targets: {},
  last: null,
  readings: [],
  mixes: [],
  tops: [],
  losses: [],
  counts: [],
  passes: [],
} as const satisfies Partial<Bucket>;
const buckets: readonly Bucket[] = [
  { ...unusedBucket, id: firstPrimeBucketId, name: "Prime", use: "prime", slurry: "fused silica prime" },
  { ...unusedBucket, id: firstBackupBucketId, name: "Backup", use: "backup", slurry: "fused silica backup" },
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
export const builtInShop: Shop = {
  dryingFactor: null,
  morMPa: null,
  slurryKgM2: {},
  stuccoKgM2: {},
  buildMm: {},
  leastDryH: {},
  finalDryH: {},
  bucketLimits: {},
  pairsLeftOut: [],
  cups: [],
  materials: [],
  kilns: [],
  furnaces: [],
  alloys: [],
  stockMoves: [],
  shrinks: [],
};
