import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { coatByRecipe } from "./demoCoats.ts";
import { demoAlloyId, demoPhotoId, demoRoomId } from "./demoIds.ts";
import { sign } from "./demoLate.ts";
import type { DemoLog } from "./demoLog.ts";
import { pouredOf } from "./demoPours.ts";
import { burnout, waxBasis } from "./demoRuns.ts";

/** Hours of the demo at a clock hour of a day gone by. */
const on = (day: number, clockH: number): number => day * 24 + 14 - clockH;
/** Nine coats, one a day, with a day off before the last three. */
const coatsFrom = (day: number): readonly number[] =>
  [0, 1, 2, 3, 4, 5, 7, 8, 9].map((later) => on(day - later, 10.5));

const general = { alloyId: demoAlloyId, recipeId: "start-general", material: "wax" } as const;

/** Pieces that are through: two sold, one with a fault, one hollow on a core, one broken. */
export function donePieces(demo: DemoLog): void {
  hooksAndScraper(demo);
  gnomonAndLantern(demo);
  cleat(demo);
}

function hooksAndScraper(demo: DemoLog): void {
  const { log } = demo;
  start(demo, 28, "demo-hooks", {
    ...general,
    name: "Demo: tree of coat hooks",
    metalKg: 4.1,
    headM: 0.25,
    part: { kind: "round", diameterMm: 32 },
    areaM2: 0.11,
    geometry: "corner",
  });
  start(demo, 28, "demo-scraper", {
    ...general,
    name: "Demo: boot scraper",
    metalKg: 3.7,
    headM: 0.24,
    part: { kind: "round", diameterMm: 40 },
    areaM2: 0.1,
    geometry: "open",
  });
  const both = ["demo-hooks", "demo-scraper"];
  for (const id of both) {
    coatByRecipe(demo, id, "start-general", coatsFrom(27));
    sign(demo, id, on(16, 14));
  }
  burnout(demo, {
    runId: "demo-burnout-1",
    pieceIds: both,
    basis: waxBasis(0.86, 4.6),
    agoH: on(16, 17),
    energyKWh: 64.2,
  });
  pour(demo, "demo-hooks", { shellC: 600, outOfKilnMin: 1.5 });
  pour(demo, "demo-scraper", { shellC: 600, outOfKilnMin: 1 });
  for (const id of both) {
    log("piece", id, "shell-knocked-out", on(12, 9), {});
    log("piece", id, "outcome-told", on(12, 10), { result: "sound", defects: [] });
  }
  log("piece", "demo-hooks", "piece-finished", on(9, 16), {
    note: "Cut off, chased, brown patina, waxed: 6 h at the bench. Sold to a school.",
  });
  log("piece", "demo-scraper", "piece-finished", on(8, 15), {
    note: "Cut off and ground, left bare: 2 h at the bench. Sold.",
  });
}

function gnomonAndLantern(demo: DemoLog): void {
  const { log } = demo;
  start(demo, 21, "demo-gnomon", {
    ...general,
    name: "Demo: sundial gnomon",
    metalKg: 4.4,
    headM: 0.3,
    part: { kind: "round", diameterMm: 45 },
    areaM2: 0.12,
    geometry: "open",
  });
  start(demo, 25, "demo-lantern", {
    ...general,
    name: "Demo: lantern base, hollow",
    metalKg: 3.9,
    headM: 0.26,
    part: { kind: "round", diameterMm: 90 },
    areaM2: 0.15,
    geometry: "recess",
    core: { litre: 0.3, pins: 8, pinMm: 4, mouthMm: 70, depthMm: 80 },
  });
  const both = ["demo-gnomon", "demo-lantern"];
  coatByRecipe(demo, "demo-gnomon", "start-general", coatsFrom(20));
  // The inside of a core dries slowly: its coats were on days before the others'.
  coatByRecipe(demo, "demo-lantern", "start-general", coatsFrom(24));
  for (const id of both) sign(demo, id, on(8, 14));
  burnout(demo, {
    runId: "demo-burnout-2",
    pieceIds: both,
    basis: waxBasis(0.92, 5.4),
    agoH: on(8, 17),
    energyKWh: 66.8,
  });
  pour(demo, "demo-gnomon", { shellC: 420, outOfKilnMin: 6, came: "short" });
  pour(demo, "demo-lantern", { shellC: 600, outOfKilnMin: 1 });
  for (const id of both) log("piece", id, "shell-knocked-out", on(5, 9), {});
  log("piece", "demo-gnomon", "outcome-told", on(5, 10), {
    result: "flawed",
    defects: ["misrun"],
    note: "The thin tip is missing. Cause: six minutes out of the kiln, shell at 420 °C. Next time: in sand, under two minutes.",
    photos: [demoPhotoId],
  });
  log("piece", "demo-gnomon", "piece-finished", on(2, 16), {
    note: "New tip welded on and chased: 5 h at the bench. Sold as a second.",
  });
  log("piece", "demo-lantern", "outcome-told", on(5, 11), {
    result: "sound",
    defects: [],
    note: "The core came out in one piece.",
  });
  log("piece", "demo-lantern", "piece-finished", on(2, 15), {
    note: "Pin holes plugged and welded, chased: 4 h at the bench. Not sold yet.",
  });
}

function cleat(demo: DemoLog): void {
  start(demo, 24, "demo-cleat", {
    ...general,
    name: "Demo: anchor-shaped cleat",
    metalKg: 1.3,
    headM: 0.2,
    part: { kind: "round", diameterMm: 28 },
    areaM2: 0.05,
    geometry: "corner",
  });
  coatByRecipe(demo, "demo-cleat", "start-general", coatsFrom(23).slice(0, 5));
  demo.log("piece", "demo-cleat", "piece-scrapped", on(18, 16), {
    reason: "Fell off its hook with five coats on: shell and wax broke at the neck.",
  });
}

function start({ log }: DemoLog, day: number, id: string, plan: PiecePlan): void {
  log("piece", id, "piece-started", on(day, 10), { plan, roomId: demoRoomId });
}

type Poured = Pick<EntryBodies["metal-poured"], "came" | "outOfKilnMin"> & { readonly shellC: number };

/** What the piece took of its melt; the shell stood at its heat half an hour before. */
function pour({ log }: DemoLog, id: string, { shellC, ...how }: Poured): void {
  const { meltId, agoH, kg } = pouredOf(id);
  log("piece", id, "shell-preheated", agoH + 0.5, { shellC: 600, heldMin: 60 });
  log("piece", id, "metal-poured", agoH, { ...how, meltId, metalC: 1140, shellC, massKg: kg });
}
