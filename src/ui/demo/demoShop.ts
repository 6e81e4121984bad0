import type { Entry } from "../../logbook/entry.ts";
import { demoAir } from "./demoAir.ts";
import { demoBackupId, demoPrimeId, demoRoomId } from "./demoIds.ts";
import { startDemoLog, type DemoLog } from "./demoLog.ts";
import { earlyPieces } from "./demoEarly.ts";
import { latePieces } from "./demoLate.ts";

/** An invented shop: a room with its air, two buckets, eight pieces at different stages. Pure: the same for the same moment. */
export function demoEntries(now: number, zone: string): readonly Entry[] {
  const demo = startDemoLog(now, zone);
  room(demo);
  buckets(demo);
  earlyPieces(demo);
  latePieces(demo);
  return demo.entries();
}

function room({ log }: DemoLog): void {
  const readings = demoAir();
  log("room", demoRoomId, "room-set", (readings[0]?.hoursAgo ?? 0) + 1, {
    name: "Demo: drying room",
    altitudeM: 120,
  });
  for (const { hoursAgo, ...air } of readings) log("room", demoRoomId, "air-read", hoursAgo, air);
}

function buckets({ log }: DemoLog): void {
  const age = 300;
  log("bucket", demoPrimeId, "bucket-set", age, {
    name: "Demo: prime",
    use: "prime",
    slurry: "fused silica flour, colloidal silica",
  });
  log("bucket", demoBackupId, "bucket-set", age, {
    name: "Demo: backup",
    use: "backup",
    slurry: "fused silica, coarser flour",
  });
  for (const [hoursAgo, cupS] of [
    [200, 28],
    [104, 30],
    [9, 33],
  ] as const)
    log("bucket", demoPrimeId, "bucket-read", hoursAgo, { cup: "4 mm cup", cupS, slurryC: 20.5, pH: 9.8 });
  log("bucket", demoBackupId, "bucket-read", 30, {
    cup: "4 mm cup",
    cupS: 16,
    slurryC: 20.8,
    densityGCm3: 1.72,
  });
}
