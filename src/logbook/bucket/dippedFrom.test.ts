import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { dippedFrom } from "./dippedFrom.ts";
import type { Bucket, Coat } from "../piece/piece.ts";
import { given, later, read, shop } from "../../../tests/logs/testBucket.ts";

const coat = (dippedAt: number, bucketId = "b1"): Coat => ({
  id: `c${dippedAt}`,
  number: 1,
  step: 0,
  kind: "prime",
  stuccoId: "80-120",
  bucketId,
  roomId: "first",
  prewet: false,
  dippedAt,
  redips: [],
  acceptedDamp: null,
  note: null,
  photos: [],
  afterBurnout: false,
});
const around = (bucket: Partial<Bucket>) => ({ buckets: new Map([["b1", given(bucket)]]), shop });
const levels = (bucket: Partial<Bucket>, ...times: readonly number[]) =>
  dippedFrom({ coats: times.map((at) => coat(at)) }, around(bucket)).map(({ health }) => health.level);

test("each coat is told of its bucket as it was then, also within one quarter of an hour", () => {
  const readings = [read("r1", later - hourMs), read("r2", later + 60_000, { cupS: 40 })];
  expect(levels({ readings }, later, later + 2 * 60_000)).toEqual(["fit", "do-not-dip"]);
  expect(levels({ readings }, later + 2 * 60_000, later)).toEqual(["do-not-dip", "fit"]);
});

test("a bucket that nobody had read by then is not checked, and says that it was never read", () => {
  const unread = { mixes: [], readings: [read("r1", later + hourMs)] };
  expect(levels(unread, later)).toEqual(["not-checked"]);
  const neverRead = (at: number): boolean | undefined =>
    dippedFrom({ coats: [coat(at)] }, around(unread))[0]?.neverRead;
  expect(neverRead(later)).toBe(true);
  expect(neverRead(later + 2 * hourMs)).toBe(false);
});

test("a coat without a bucket, or from one nobody knows, is left out", () => {
  const from = (bucketId: string | null) =>
    dippedFrom({ coats: [{ ...coat(later), bucketId }] }, around({ readings: [] }));
  expect(from(null)).toEqual([]);
  expect(from("gone")).toEqual([]);
});

test("the reason given for the visit is told with it, an old one is not", () => {
  const pass = { id: "p1", at: later - hourMs, verdict: "do-not-dip", reason: "one coat to go" } as const;
  const reasonAt = (at: number) => dippedFrom({ coats: [coat(at)] }, around({ passes: [pass] }))[0]?.reason;
  expect(reasonAt(later)).toBe("one coat to go");
  expect(reasonAt(later - 2 * hourMs)).toBeNull();
  expect(reasonAt(later + 12 * hourMs)).toBeNull();
});
