import type { Entry } from "../../../logbook/entries/entry.ts";
import { demoRooms } from "./demoAir.ts";
import { demoBuckets } from "./demoBuckets.ts";
import { donePieces } from "./demoDone.ts";
import { demoDryness } from "./demoDryness.ts";
import { earlyPieces } from "./demoEarly.ts";
import { latePieces } from "./demoLate.ts";
import { startDemoLog } from "./demoLog.ts";
import { demoPours } from "./demoPours.ts";
import { demoThings, judgedPair } from "./demoThings.ts";

/**
 * An invented shop: two rooms with their air, buckets, eight pieces at different stages and five that are through, what they were weighed and
 * felt to be, a kiln and a furnace that were fired, and a pour planned for tomorrow. Pure: the same for the same moment.
 */
export function demoEntries(now: number, zone: string): readonly Entry[] {
  const demo = startDemoLog(now, zone);
  demoRooms(demo);
  demoThings(demo);
  demoBuckets(demo);
  earlyPieces(demo);
  latePieces(demo);
  donePieces(demo);
  demoDryness(demo);
  judgedPair(demo);
  demoPours(demo);
  return demo.entries();
}
