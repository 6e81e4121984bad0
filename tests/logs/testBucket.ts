import { millisecondsInDay as dayMs } from "date-fns/constants";
import { builtInShop, unusedBucket } from "../../src/logbook/piece/builtIns.ts";
import { bucketStandingOf, type BucketStanding } from "../../src/logbook/bucket/bucketStanding.ts";
import type { Bucket, BucketReading, Shop } from "../../src/logbook/piece/piece.ts";

/** For tests only: a bucket of 20 L fused silica prime, made on a Monday in March and looked at ten days later. */
export const start = Date.UTC(2026, 2, 2, 8);
export const shop: Shop = {
  ...builtInShop,
  cups: [
    { id: "blue", name: "Blue tape", cup: "zahn-4", retired: false },
    { id: "spare", name: "Spare", cup: "zahn-4", retired: false },
    { id: "wide", name: "Wide", cup: "zahn-5", retired: false },
  ],
};
export const targets = {
  flourId: "fused-silica",
  ratio: 1.7,
  cupId: "blue",
  lowS: 20,
  highS: 26,
  slurryC: 22,
  fullL: 20,
} as const;

export const read = (id: string, at: number, body: Partial<BucketReading> = {}): BucketReading => ({
  id,
  at,
  cupId: "blue",
  cupS: 23,
  slurryC: 22,
  ...body,
});
export const made = { id: "m1", at: start, flourKg: 21.17, solKg: 12.453, waterKg: 0 };
export const later = start + 10 * dayMs;

export const given = (bucket: Partial<Bucket> = {}): Bucket => ({
  ...unusedBucket,
  id: "b1",
  name: "Tall",
  use: "prime",
  slurry: "",
  targets,
  mixes: [made],
  ...bucket,
});
export const standingAt = (now: number, bucket: Partial<Bucket> = {}): BucketStanding =>
  bucketStandingOf(given(bucket), shop, now);
export const codes = ({ health }: BucketStanding): readonly string[] =>
  health.reasons.map(({ code }) => code);
