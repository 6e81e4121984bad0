import { demoBackupId, demoCupId, demoOldBucketId, demoPrimeId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";
import { noise, rounded } from "./demoNumbers.ts";

const dayH = 24;
const madeH = 30 * dayH;
/** Read before each half of a day's work: a quarter past eight and half past three, from two in the afternoon. */
const readAtH = [5.75, -1.5] as const;
/** The same on the day that is on: hours before now. */
const readTodayH = [5.4, 1.4] as const;
/** Water is made up every third day. */
const toppedEveryH = 3 * dayH;

type Slurry = {
  readonly id: string;
  readonly middleS: number;
  readonly densityGCm3: number;
  readonly slurryC: number;
  readonly pH: number;
};

/** Three buckets with a month behind them: two in good order, one that gels. */
export function demoBuckets({ log }: DemoLog): void {
  log("bucket", demoPrimeId, "bucket-set", madeH + 1, {
    name: "Demo: prime",
    use: "prime",
    slurry: "fused silica flour, colloidal silica",
    flourId: "fused-silica",
    flourGCm3: 2.2,
    solGCm3: 1.2,
    solSilica: 0.3,
    ratio: 1.7,
    densityGCm3: 1.681,
    cupId: demoCupId,
    lowS: 19,
    highS: 25,
    slurryC: 21,
    fullL: 20,
    leastL: 12,
    openM2: 0.071,
  });
  log("bucket", demoPrimeId, "bucket-mixed", madeH, { flourKg: 21.17, solKg: 12.45, waterKg: 0, litre: 20 });
  log("bucket", demoBackupId, "bucket-set", madeH + 1, {
    name: "Demo: backup",
    use: "backup",
    slurry: "fused silica, coarser flour",
    flourId: "fused-silica",
    flourGCm3: 2.2,
    solGCm3: 1.2,
    solSilica: 0.3,
    ratio: 1.5,
    densityGCm3: 1.65,
    cupId: demoCupId,
    lowS: 12,
    highS: 16,
    slurryC: 21,
    fullL: 40,
    leastL: 20,
    openM2: 0.11,
  });
  log("bucket", demoBackupId, "bucket-mixed", madeH, { flourKg: 39.6, solKg: 26.4, waterKg: 0, litre: 40 });
  month(log, { id: demoPrimeId, middleS: 21.6, densityGCm3: 1.681, slurryC: 21, pH: 9.7 });
  month(log, { id: demoBackupId, middleS: 13.8, densityGCm3: 1.65, slurryC: 20.8, pH: 9.8 });
  log("bucket", demoPrimeId, "bucket-counted", 4, { litre: 17.5 });
  oldBucket(log);
}

function month(log: DemoLog["log"], { id, middleS, densityGCm3, slurryC, pH }: Slurry): void {
  for (let ago = madeH - toppedEveryH; ago > dayH; ago -= toppedEveryH) {
    log("bucket", id, "bucket-topped", ago, {
      flourKg: 0,
      solKg: 0,
      waterKg: 0.6 + 0.05 * noise(ago),
      why: "evaporation",
      lid: "off",
      expected: { densityGCm3, cupS: middleS },
    });
    log("bucket", id, "bucket-read", ago - 0.4, {
      cupId: demoCupId,
      cupS: rounded(middleS + 0.3 * noise(ago + 1), 1),
      slurryC,
      densityGCm3: rounded(densityGCm3 + 0.003 * noise(ago + 3), 3),
      asLeft: true,
    });
  }
  let count = 0;
  const days = Array.from({ length: madeH / dayH - 1 }, (_, day) => madeH - (day + 1) * dayH);
  const before = days.flatMap((day) => readAtH.map((hour) => day + hour));
  for (const ago of [...before, ...readTodayH]) {
    // Water dries off between top-ups, and that is all that moves it, but for the hand and the cup.
    const driedDays = ((madeH - ago) % toppedEveryH) / dayH;
    const first = rounded(middleS * (1 + 0.006 * driedDays) + 0.45 * noise(ago), 1);
    const dipsS = [first, rounded(first + 0.2 * noise(ago + 5), 1)];
    log("bucket", id, "bucket-read", ago, {
      cupId: demoCupId,
      dipsS,
      cupS: rounded((first + (dipsS[1] ?? first)) / 2, 2),
      slurryC: rounded(slurryC + 0.6 * noise(ago + 2), 1),
      ...(count % 2 === 0
        ? { weighedMl: 100, weighedG: rounded(100 * (densityGCm3 + 0.0012 * driedDays), 1) }
        : {}),
      ...(count % 15 === 0 ? { pH: rounded(pH + 0.04 * noise(ago), 2) } : {}),
      ...(count % 4 === 0 ? { smell: "none", skin: false, lumps: false, foam: false } : {}),
    });
    count += 1;
  }
}

/** Thick at the right density, pH sinking, and the vial gelled: no water will help it. */
function oldBucket(log: DemoLog["log"]): void {
  const id = demoOldBucketId;
  log("bucket", id, "bucket-set", 200 * dayH, {
    name: "Demo: old backup",
    use: "backup",
    slurry: "fused silica, from last winter",
    flourId: "fused-silica",
    ratio: 1.5,
    densityGCm3: 1.65,
    cupId: demoCupId,
    lowS: 12,
    highS: 16,
    slurryC: 21,
    fullL: 20,
  });
  log("bucket", id, "bucket-mixed", 199 * dayH, { flourKg: 19.8, solKg: 13.2, waterKg: 0, litre: 20 });
  const told = [
    [14, 14.2, 9.4],
    [7, 15.6, 9.3],
    [1.2, 19.4, 9.0],
  ] as const;
  for (const [days, cupS, pH] of told)
    log("bucket", id, "bucket-read", days * dayH, {
      cupId: demoCupId,
      cupS,
      slurryC: 21,
      densityGCm3: 1.652,
      pH,
    });
  log("bucket", id, "bucket-read", 6, { gelledAfterH: 20, smell: "none", lumps: true });
}
