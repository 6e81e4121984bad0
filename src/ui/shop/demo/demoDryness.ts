import { coatIdOf } from "./demoCoats.ts";
import type { DemoLog } from "./demoLog.ts";

type Seen = {
  readonly piece: string;
  readonly coat: number;
  /** When that coat was dipped, hours ago. */
  readonly dippedAgo: number;
  /** Hours after the dip at which a bag about it said so; null where nobody bagged it. */
  readonly wetH: number | null;
  readonly dryH: number | null;
};

/** Coats somebody bagged. Two were found wet and never tried again; one dried in a draught nobody wrote down. */
const bagged: readonly Seen[] = [
  { piece: "demo-bell", coat: 4, dippedAgo: 238, wetH: 15.5, dryH: 17 },
  { piece: "demo-bell", coat: 6, dippedAgo: 190, wetH: 15, dryH: null },
  { piece: "demo-dancer", coat: 8, dippedAgo: 98, wetH: 4.5, dryH: 7 },
  { piece: "demo-dancer", coat: 7, dippedAgo: 122, wetH: 5, dryH: 6.5 },
  { piece: "demo-plaque", coat: 7, dippedAgo: 122, wetH: null, dryH: 4 },
  { piece: "demo-carp", coat: 4, dippedAgo: 70, wetH: 2.4, dryH: null },
  { piece: "demo-medals", coat: 7, dippedAgo: 194, wetH: 6, dryH: 7.5 },
];

/** What was seen of the drying: a bag, a balance and a thermometer. */
export function demoDryness(demo: DemoLog): void {
  for (const seen of bagged) bag(demo, seen);
  surface(demo);
  weighedDry(demo);
}

/** The coat that teaches nothing, and why. */
export const demoLeftOut = (demo: DemoLog) => ({
  coatId: coatIdOf(demo, "demo-medals", 7),
  reason: "Demo: the door stood open in the rain",
});

function bag(demo: DemoLog, { piece, coat, dippedAgo, wetH, dryH }: Seen): void {
  const coatId = coatIdOf(demo, piece, coat);
  const seen = (verdict: "wet" | "dry", afterH: number) =>
    demo.log("piece", piece, "dryness-seen", dippedAgo - afterH, {
      method: "bag",
      rh: verdict === "wet" ? 0.97 : 0.55,
      roomRh: 0.54,
      minutes: 30,
      coatId,
    });
  if (wetH !== null) seen("wet", wetH);
  if (dryH !== null) seen("dry", dryH);
}

/** A thermometer on the shell, and the same on a dry one that hangs beside it. */
function surface(demo: DemoLog): void {
  const read = (piece: string, coat: number, hoursAgo: number, surfaceC: number, dryShellC: number) =>
    demo.log("piece", piece, "dryness-seen", hoursAgo, {
      method: "surface",
      surfaceC,
      dryShellC,
      coatId: coatIdOf(demo, piece, coat),
    });
  read("demo-carp", 3, 91, 17.2, 20.9);
  read("demo-carp", 3, 77.5, 20.9, 20.9);
  read("demo-medals", 11, 0.5, 18.4, 21.4);
}

type Weighed = {
  readonly piece: string;
  readonly coat: number;
  readonly dippedAgo: number;
  readonly dryG: number;
  readonly drainedG: number;
  readonly stuccoedG: number;
  /** Grams, and hours after the dip. */
  readonly drying: readonly (readonly [massG: number, afterH: number])[];
};

function weighed(demo: DemoLog, of: Weighed): void {
  const { piece, dippedAgo } = of;
  const coatId = coatIdOf(demo, piece, of.coat);
  const weigh = (hoursAgo: number, massG: number, moment: "drained" | "stuccoed" | "drying") =>
    demo.log("piece", piece, "dryness-seen", hoursAgo, { method: "weight", massG, coatId, moment });
  demo.log("piece", piece, "piece-weighed", dippedAgo + 0.1, { massG: of.dryG });
  weigh(dippedAgo - 0.02, of.drainedG, "drained");
  weigh(dippedAgo - 0.06, of.stuccoedG, "stuccoed");
  for (const [massG, afterH] of of.drying) weigh(dippedAgo - afterH, massG, "drying");
}

/** Two coats weighed until they were dry. */
function weighedDry(demo: DemoLog): void {
  weighed(demo, {
    piece: "demo-handle",
    coat: 3,
    dippedAgo: 52,
    dryG: 342.6,
    drainedG: 367.1,
    stuccoedG: 401.9,
    drying: [
      [398.2, 1.5],
      [395.2, 4],
    ],
  });
  weighed(demo, {
    piece: "demo-medals",
    coat: 10,
    dippedAgo: 27,
    dryG: 1041.2,
    drainedG: 1088.3,
    stuccoedG: 1165.5,
    drying: [
      [1158.2, 2],
      [1152.6, 5.5],
    ],
  });
}
