import { millisecondsInHour as hourMs } from "date-fns/constants";
import { streamOf } from "../src/logbook/entries/entry.ts";
import type { RunBasis } from "../src/logbook/entries/fireBodies.ts";
import { RunPage } from "../src/ui/fire/run/RunPage.tsx";
import { deskNow, showAt, type Desk } from "./demoDesk.tsx";

const basis: RunBasis = {
  route: "staged",
  pattern: { material: "wax", massKg: 0.4 },
  wallMm: 7.2,
  family: "fused-silica",
  shellKg: 2,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  blindMm: 0,
  kiln: { powerKW: 3.6, maxC: 1200, volumeL: 60 },
  after: "inspect",
  preheatC: null,
  fireC: null,
};

/** A burnout of the plaque, begun four hours ago, or planned and no more. */
export async function burning(desk: Desk, { isStarted = true } = {}) {
  const stream = streamOf("run", "r");
  const log = async (type: string, hoursAgo: number, body: object, on = stream) => {
    const command = { do: "log", stream: on, type, body, at: deskNow - hoursAgo * hourMs };
    const done = await desk.shop.log(command as Parameters<typeof desk.shop.log>[0]);
    if (!done.ok) throw new Error(done.text);
  };
  const read = (hoursAgo: number, kilnC: number) => log("run-read", hoursAgo, { kilnC });
  const segments = [
    { kind: "instruction", code: "cup-down" },
    { kind: "ramp", toC: 150, rateKPerH: 100, reason: "practice" },
    { kind: "hold", atC: 150, minutes: 60, reason: "drain-window" },
    { kind: "ramp", toC: 870, rateKPerH: 200, reason: "decomposition" },
    { kind: "hold", atC: 870, minutes: 90, reason: "sintering" },
  ];
  const plan = { kilnId: null, purpose: "burnout", pieceIds: ["demo-plaque"], startC: 20, segments, basis };
  await log("run-planned", 5, plan);
  if (!isStarted) return { read };
  await log("run-started", 4, { kilnC: 20 });
  await log("burnout-started", 4, { runId: "r" }, streamOf("piece", "demo-plaque"));
  return { read };
}
/** Its page. */
export const openRun = (desk: Desk) =>
  showAt(desk.shop, "/fire/run/r", { route: "/fire/run/:id", screen: RunPage });
