import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, expect, test } from "vitest";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import type { EntryBodies, EntryType } from "../../../logbook/entries/entry.ts";
import { BucketCardPage } from "../bucketCard/BucketCardPage.tsx";
import { BucketChartPage } from "../bucketChart/BucketChartPage.tsx";
import { MakeUpPage } from "../makeUp/MakeUpPage.tsx";
import { ReadPage } from "../reading/ReadPage.tsx";
import { StockPage } from "../../shop/stock/StockPage.tsx";
import { BucketPage } from "./BucketPage.tsx";
import { BucketsPage } from "./BucketsPage.tsx";

afterEach(clearDesks);

const id = "first-prime";
const bare: EntryBodies["bucket-set"] = { name: "Prime", use: "prime", slurry: "" };
const told: EntryBodies["bucket-set"] = {
  ...bare,
  flourId: "fused-silica",
  ratio: 1.7,
  cupId: "zahn-4",
  lowS: 18,
  highS: 26,
  slurryC: 22,
  fullL: 20,
  leastL: 8,
};
type Line = readonly [type: EntryType, body: object];
const mix: Line = ["bucket-mixed", { flourKg: 21.17, solKg: 12.453, waterKg: 0, litre: 20 }];
const read = (body: object): Line => ["bucket-read", body];
const times = (count: number, lines: readonly Line[]): readonly Line[] =>
  Array.from({ length: count }, () => lines).flat();

const cases: Readonly<Record<string, readonly Line[]>> = {
  "only smelt": [["bucket-set", bare], read({ smell: "foul" })],
  "only a gel test": [["bucket-set", told], read({ gelledAfterH: 0 })],
  "a gel test of no hours yet": [["bucket-set", told], mix, read({ liquidForH: 0 })],
  "no targets, all else read": [
    ["bucket-set", bare],
    mix,
    read({ cupId: "zahn-4", cupS: 1, densityGCm3: 0.9, pH: 0, liquorGCm3: 0.9, ovenSolids: 0, plateG: 0 }),
  ],
  "the largest figures a log takes": [
    ["bucket-set", { ...told, ratio: 10, fullL: 2000, leastL: 2000 }],
    ["bucket-mixed", { flourKg: 5000, solKg: 5000, waterKg: 5000, litre: 2000 }],
    read({
      cupId: "zahn-4",
      cupS: 600,
      slurryC: 60,
      densityGCm3: 5,
      pH: 14,
      liquorGCm3: 5,
      ovenSolids: 1,
      plateG: 1000,
      plateCm2: 1,
      liquidForH: 10_000,
      bacteriaPerMl: 1e12,
    }),
  ],
  "frozen, and thinner than its cup can tell": [
    ["bucket-set", told],
    mix,
    read({ cupId: "zahn-4", cupS: 1, slurryC: -10, densityGCm3: 1 }),
  ],
  "a mix of no litres, of water alone": [
    ["bucket-set", { ...told, fullL: 0, leastL: 0 }],
    ["bucket-mixed", { flourKg: 0, solKg: 0, waterKg: 1, litre: 0 }],
    read({ cupId: "zahn-4", cupS: 20, slurryC: 22, densityGCm3: 1 }),
  ],
  "a mix of flour alone": [
    ["bucket-set", told],
    ["bucket-mixed", { flourKg: 3, solKg: 0, waterKg: 0 }],
    read({ densityGCm3: 1.68 }),
  ],
  "counted empty, then more lost than was in it": [
    ["bucket-set", told],
    mix,
    ["bucket-counted", { litre: 0 }],
    ["bucket-lost", { litre: 2000, how: "lost" }],
    read({ cupId: "zahn-4", cupS: 22, slurryC: 22, densityGCm3: 1.7 }),
  ],
  retired: [
    ["bucket-set", told],
    mix,
    read({ cupId: "zahn-4", cupS: 22 }),
    ["bucket-set", { ...told, retired: true }],
  ],
  "read with two cups in turn": [
    ["bucket-set", told],
    mix,
    ...times(8, [
      read({ cupId: "zahn-4", cupS: 22, slurryC: 22 }),
      read({ cup: "a tin with a hole", cupS: 9, slurryC: 22 }),
      read({ cupId: "zahn-5", cupS: 12 }),
    ]),
  ],
  "forty batches, each read once": [
    ["bucket-set", told],
    ...times(40, [mix, read({ cupId: "zahn-4", cupS: 22, slurryC: 22, densityGCm3: 1.68 })]),
  ],
};

async function desk(lines: readonly Line[]): Promise<Desk> {
  const made = await demoDesk();
  for (const [i, [type, body]] of lines.entries()) {
    const done = await made.shop.log({
      do: "log",
      stream: `bucket/${id}`,
      type: type as "bucket-read",
      body: body as EntryBodies["bucket-read"],
      at: deskNow - (lines.length - i) * hourMs,
    });
    expect(done).toMatchObject({ ok: true });
  }
  return made;
}

const screens = [
  ["/buckets", "/buckets", BucketsPage],
  [`/buckets/${id}`, "/buckets/:id", BucketPage],
  [`/buckets/${id}/make-up`, "/buckets/:id/make-up", MakeUpPage],
  [`/buckets/${id}/chart`, "/buckets/:id/chart", BucketChartPage],
  [`/buckets/${id}/card`, "/buckets/:id/card", BucketCardPage],
  [`/buckets/${id}/read`, "/buckets/:id/read", ReadPage],
  ["/shop/stock", "/shop/stock", StockPage],
] as const;

test.each(Object.keys(cases))(
  "%s: every screen of the bucket shows, and no figure that is none",
  async (name) => {
    const { shop } = await desk(cases[name] ?? []);
    for (const [path, route, screen] of screens) {
      showAt(shop, path, { route, screen });
      // A screen that still reads its store shows a title and nothing else.
      await expect
        .poll(() => (document.body.lastElementChild?.textContent ?? "").length, { message: path })
        .toBeGreaterThan(60);
    }
    const drawn = [...document.querySelectorAll("svg *")].flatMap((one) =>
      one.getAttributeNames().map((key) => one.getAttribute(key)),
    );
    const said = [document.body.textContent, ...drawn].join(" ");
    expect(said).not.toMatch(/.{0,80}(NaN|undefined|Infinity|∞|\[object|\bnull\b).{0,40}/);
  },
);
