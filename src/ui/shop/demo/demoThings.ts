import { demoAlloyId, demoCupId, demoFurnaceId, demoKilnId } from "./demoIds.ts";
import type { EntryBodies, EntryType } from "../../../logbook/entries/entry.ts";
import type { DemoLog } from "./demoLog.ts";
import { demoLeftOut } from "./demoDryness.ts";

const dayH = 24;
const setH = 45 * dayH;

type Materials = readonly EntryBodies["material-set"][];

const priced = { currency: "EUR", packKg: 25 } as const;
const materials: Materials = [
  {
    ...priced,
    materialId: "demo-flour",
    name: "Demo: fused silica flour",
    kind: "flour",
    flourId: "fused-silica",
    pricePerKg: 2.1,
    weeksToCome: 2,
  },
  {
    ...priced,
    materialId: "demo-sol",
    name: "Demo: silica sol, 30 %",
    kind: "sol",
    pricePerKg: 3.4,
    weeksToCome: 3,
    keepsMonths: 12,
  },
  {
    ...priced,
    materialId: "demo-stucco-fine",
    name: "Demo: fused silica, fine",
    kind: "stucco",
    stuccoId: "80-120",
    pricePerKg: 1.9,
  },
  {
    ...priced,
    materialId: "demo-stucco-middle",
    name: "Demo: fused silica, middle",
    kind: "stucco",
    stuccoId: "30-80",
    pricePerKg: 1.7,
  },
  {
    ...priced,
    materialId: "demo-stucco-coarse",
    name: "Demo: fused silica, coarse",
    kind: "stucco",
    stuccoId: "16-30",
    pricePerKg: 1.6,
    weeksToCome: 2,
  },
  {
    materialId: "demo-ingot",
    name: "Demo: silicon bronze ingot",
    kind: "metal",
    pricePerKg: 12.5,
    currency: "EUR",
    weeksToCome: 1,
  },
];

type Move = readonly [material: string, daysAgo: number, how: StockHow, massKg: number, note?: string];
type StockHow = EntryBodies["stock-moved"]["how"];
const moves: readonly Move[] = [
  ["demo-flour", 40, "received", 75],
  ["demo-flour", 12, "lost", 1.5, "Demo: a torn bag"],
  ["demo-sol", 40, "received", 50],
  ["demo-stucco-fine", 40, "received", 25],
  ["demo-stucco-middle", 40, "received", 25],
  ["demo-stucco-coarse", 40, "received", 75],
  ["demo-stucco-coarse", 5, "counted", 61],
  ["demo-ingot", 30, "received", 40],
  ["demo-ingot", 20, "made-up", 14],
];

/** What hangs on the wall, lies in the store and makes heat. */
export function demoThings(demo: DemoLog): void {
  const own = ownOf(demo);
  own("cup-set", setH, { cupId: demoCupId, name: "Demo: Zahn 4", cup: "zahn-4" });
  for (const material of materials) own("material-set", setH, material);
  for (const [materialId, daysAgo, how, massKg, note] of moves)
    own("stock-moved", daysAgo * dayH, { materialId, how, massKg, ...(note === undefined ? {} : { note }) });
  own("kiln-set", setH, {
    kilnId: demoKilnId,
    name: "Demo: electric kiln, 120 litres",
    heat: "electric",
    powerKW: 9,
    volumeL: 120,
    maxC: 1200,
    pricePerKWh: 0.32,
    currency: "EUR",
  });
  own("furnace-set", setH, {
    furnaceId: demoFurnaceId,
    name: "Demo: propane furnace",
    heat: "propane",
    powerKW: 15,
    crucibleL: 1.8,
    pricePerKWh: 0.15,
    currency: "EUR",
  });
  own("alloy-set", setH, {
    alloyId: demoAlloyId,
    copiedFrom: "c87300",
    name: "Demo: studio bronze",
    densityKgM3: 8480,
    note: "Demo: three castings weighed in water.",
  });
  for (const [days, patternMm, castingMm] of [
    [19, 120, 117.7],
    [12, 86.4, 84.8],
    [4, 151, 148.3],
  ] as const)
    own("shrink-measured", days * dayH, { alloyId: demoAlloyId, patternMm, castingMm, held: "free" });
}

/** Said once the coats are there to be spoken of. */
export const judgedPair = (demo: DemoLog): string =>
  ownOf(demo)("drying-pair-judged", 100, { ...demoLeftOut(demo), leftOut: true });

const ownOf =
  ({ log }: DemoLog) =>
  <T extends EntryType>(type: T, hoursAgo: number, body: EntryBodies[T]): string =>
    log("shop", "own", type, hoursAgo, body);
