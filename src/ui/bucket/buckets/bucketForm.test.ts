import { describe, expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { draftOfBucket, readBucket } from "./bucketForm.ts";
import { startingAims } from "./startingAims.ts";

const metric = makeFormat("metric", "en-GB");
const named = { ...draftOfBucket(null), name: "Tall", use: "prime" } as const;

describe("the form of a bucket", () => {
  test("a bucket needs a name and what it is for, and nothing else", () => {
    const none = readBucket(draftOfBucket(null), metric);
    expect(!none.ok && Object.keys(none.errors)).toEqual(["name", "use"]);
    const read = readBucket(named, metric);
    expect(read.ok && read.value).toEqual({ name: "Tall", use: "prime", slurry: "" });
  });

  test("a band wants both its ends in order", () => {
    const half = readBucket({ ...named, lowS: 12 }, metric);
    expect(!half.ok && half.errors["highS"]).toMatch(/both ends/);
    const turned = readBucket({ ...named, lowS: 16, highS: 12 }, metric);
    expect(!turned.ok && turned.errors["highS"]).toMatch(/^Found 12.s, expected 16.s or more/);
  });

  test("no piece can need more than the bucket holds", () => {
    const read = readBucket({ ...named, fullL: 20, leastL: 25 }, metric);
    expect(!read.ok && read.errors["leastL"]).toMatch(/20.L/);
  });

  test("slurry kept at 350 °F is told in the unit it was typed in", () => {
    const us = makeFormat("us", "en-US");
    const read = readBucket({ ...named, slurryC: (350 - 32) / 1.8 }, us);
    expect(!read.ok && read.errors["slurryC"]).toMatch(/Found 350\s°F for the temperature, expected 14\s°F/);
  });
});

describe("starting values", () => {
  test("a fused silica prime: 1.7 to one, 1.681 g/cm³, 18 to 30 s in a Zahn 4", () => {
    const aims = startingAims({ startId: "fused-silica-prime", use: "prime", cupKind: null });
    expect(aims).toMatchObject({ ratio: 1.7, densityGCm3: 1.681, lowS: 18, highS: 30, flourGCm3: 2.2 });
  });

  test("one bucket for all goes by its own band, a cup the table has no band for gets none", () => {
    const start = { startId: "fused-silica-prime", use: "single" } as const;
    expect(startingAims({ ...start, cupKind: "zahn-5" })).toMatchObject({ lowS: 7, highS: 12 });
    expect(startingAims({ ...start, cupKind: "ford-4" })).toMatchObject({ lowS: null, highS: null });
  });

  test("what they give passes the form's own gate", () => {
    const aims = startingAims({ startId: "zircon-prime", use: "prime", cupKind: null });
    if (aims === null) throw new Error("no starting values");
    expect(readBucket({ ...named, ...aims }, metric).ok).toBe(true);
  });
});
