import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { bucketStandingOf } from "./bucketStanding.ts";
import { builtInBucket, builtInShop, unusedBucket } from "../piece/builtIns.ts";
import type { Bucket } from "../piece/piece.ts";
import { wantsLook } from "./bucketLook.ts";

const now = Date.UTC(2026, 4, 4, 9);
const look = (bucket: Partial<Bucket>): boolean =>
  wantsLook(
    bucketStandingOf(
      {
        ...unusedBucket,
        id: "b",
        name: "B",
        use: "backup",
        slurry: "",
        targets: { lowS: 12, highS: 16 },
        ...bucket,
      },
      builtInShop,
      now,
    ),
  );
const read = (hoursAgo: number, cupS: number) => ({ id: `r${hoursAgo}`, at: now - hoursAgo * hourMs, cupS });
const pass = (hoursAgo: number) =>
  ({ id: "p", at: now - hoursAgo * hourMs, verdict: "not-checked" }) as const;

test("a newcomer's bucket lets through, one that is set up and unread asks for a look", () => {
  const prime = builtInBucket("first-prime");
  if (prime === null) throw new Error("no built-in bucket");
  expect(wantsLook(bucketStandingOf(prime, builtInShop, now))).toBe(false);
  expect(look({})).toBe(true);
});

test("read fit today it lets through, out of its band it asks", () => {
  expect(look({ readings: [read(1, 14)] })).toBe(false);
  expect(look({ readings: [read(1, 20)] })).toBe(true);
});

test("a degree off with its viscosity read goes through; not read at all, or with something else, it asks", () => {
  const aims = { lowS: 12, highS: 16, slurryC: 22 };
  const at = (slurryC: number, more: object = {}) => [{ ...read(1, 14), slurryC, ...more }];
  for (const slurryC of [19, 21, 24.5]) expect(look({ targets: aims, readings: at(slurryC) })).toBe(false);
  expect(look({ targets: aims, readings: at(16) })).toBe(true);
  expect(look({ targets: aims, readings: at(21, { lumps: true }) })).toBe(true);
  expect(look({ targets: aims, readings: [] })).toBe(true);
});

test("a look holds for the visit, and not once the bucket was read or changed since", () => {
  expect(look({ passes: [pass(2)] })).toBe(false);
  expect(look({ passes: [pass(13)] })).toBe(true);
  const top = { id: "t", at: now - hourMs, flourKg: 0, solKg: 0, waterKg: 1, why: "evaporation" } as const;
  expect(look({ passes: [pass(2)], tops: [top] })).toBe(true);
  expect(look({ passes: [pass(2)], readings: [read(1, 20)] })).toBe(true);
});
