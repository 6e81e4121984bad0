import { coatByRecipe } from "./demoCoats.ts";
import { demoRoomId, demoShedId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";

/** Pieces that are being coated: one only named, one drying, one ready, one with a hasty coat. */
export function earlyPieces(demo: DemoLog): void {
  const { log } = demo;
  log("piece", "demo-wren", "piece-started", 1.2, {
    plan: { name: "Demo: wren on a twig" },
    roomId: demoRoomId,
  });

  log("piece", "demo-heron", "piece-started", 30, {
    plan: {
      name: "Demo: heron, left wing",
      material: "wax",
      alloyId: "c87300",
      metalKg: 1.9,
      headM: 0.28,
      part: { kind: "flat", widthMm: 55, lengthMm: 140 },
      areaM2: 0.07,
      recipeId: "start-small",
      geometry: "open",
    },
    roomId: demoRoomId,
  });
  coatByRecipe(demo, "demo-heron", "start-small", [26, 0.7]);

  log("piece", "demo-handle", "piece-started", 102, {
    plan: {
      name: "Demo: door handle 3",
      material: "pla",
      alloyId: "c87500",
      metalKg: 1.1,
      headM: 0.22,
      part: { kind: "round", diameterMm: 34 },
      areaM2: 0.04,
      recipeId: "start-small",
      geometry: "corner",
    },
    roomId: demoRoomId,
  });
  log("piece", "demo-handle", "pattern-measured", 101.5, {
    patternId: "demo-handle",
    fileName: "Demo: door handle 3.stl",
    sumsVersion: 1,
    triangles: 48_216,
    watertight: true,
    mmPerUnit: 1.018,
    volumeMm3: 102_600,
    areaMm2: 31_400,
    boxMm: [148, 66, 34],
    up: [1, 0, 0],
    headM: 0.22,
    tips: 3,
    vents: 2,
    drains: 1,
    trappedMl: 0.4,
    gatingMm3: 29_800,
    thinnestMm: 5.2,
    thickestMm: 31,
  });
  const handle = coatByRecipe(demo, "demo-handle", "start-small", [100, 76, 52, 28]);
  log("piece", "demo-handle", "dryness-seen", 2, {
    method: "touch",
    verdict: "dry",
    coatId: handle.at(-1) ?? "",
  });
  // Dry, and out of the way until somebody dips again.
  log("piece", "demo-handle", "piece-moved", 20, { roomId: demoShedId });

  log("piece", "demo-carp", "piece-started", 150, {
    plan: {
      name: "Demo: carp water spout",
      material: "pla",
      alloyId: "c87300",
      metalKg: 4.2,
      headM: 0.42,
      part: { kind: "round", diameterMm: 150 },
      areaM2: 0.16,
      recipeId: "start-general",
      geometry: "recess",
      note: "Hollow print, 1.2 mm walls.",
    },
    roomId: demoRoomId,
  });
  const carp = coatByRecipe(demo, "demo-carp", "start-general", [140, 118, 94, 70]);
  log("piece", "demo-carp", "coat-dipped", 67.5, {
    number: 5,
    step: 4,
    kind: "backup",
    stuccoId: "16-30",
    bucketId: null,
    roomId: demoRoomId,
    prewet: false,
    acceptedDamp: { coatId: carp.at(-1) ?? "", leftShare: 0.8 },
    note: "In a hurry.",
  });
}
