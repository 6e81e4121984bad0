import { coatBeside, coatByRecipe } from "./demoCoats.ts";
import { demoRoomId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";
import { burnout } from "./demoRuns.ts";

const nineCoats = [286, 262, 238, 214, 190, 166, 122, 98, 74] as const;

/** Pieces whose wall is up: one before its review, one mended after burnout, one fired, one poured and told. */
export function latePieces(demo: DemoLog): void {
  plaque(demo);
  medals(demo);
  dancer(demo);
  bell(demo);
}

/** A broad flat under a high head: the wall that looks thick and is not. */
function plaque(demo: DemoLog): void {
  const { log } = demo;
  log("piece", "demo-plaque", "piece-started", 290, {
    plan: {
      name: "Demo: plaque with two fish",
      material: "wax",
      alloyId: "c87300",
      metalKg: 3.4,
      headM: 0.4,
      part: { kind: "flat", widthMm: 120, lengthMm: 180 },
      areaM2: 0.09,
      recipeId: "start-general",
      geometry: "open",
    },
    roomId: demoRoomId,
  });
  coatByRecipe(demo, "demo-plaque", "start-general", nineCoats);
  log("piece", "demo-plaque", "wall-measured", 46, { wallMm: 7.2, where: "cup edge" });
}

function medals(demo: DemoLog): void {
  const { log } = demo;
  log("piece", "demo-medals", "piece-started", 362, {
    plan: {
      name: "Demo: tree of six medals",
      material: "wax",
      alloyId: "c87300",
      metalKg: 1.6,
      headM: 0.25,
      part: { kind: "flat", widthMm: 60, lengthMm: 60 },
      areaM2: 0.06,
      recipeId: "start-general",
      geometry: "open",
      pockets: ["recess"],
    },
    roomId: demoRoomId,
  });
  coatByRecipe(
    demo,
    "demo-medals",
    "start-general",
    nineCoats.map((hours) => hours + 72),
  );
  sign(demo, "demo-medals", 73);
  log("piece", "demo-medals", "burnout-started", 72, {});
  log("piece", "demo-medals", "burnout-read", 71, { kilnC: 260, note: "wax running" });
  const crack = log("piece", "demo-medals", "crack-found", 70, {
    kind: "hairline",
    stage: "burnout",
    where: "under the cup",
  });
  log("piece", "demo-medals", "burnout-ended", 69, {
    result: "stopped",
    note: "kiln off, shell cold by evening",
  });
  log("piece", "demo-medals", "crack-patched", 30, {
    crackId: crack,
    how: "slurry and fine stucco brushed in",
  });
  log("piece", "demo-medals", "wire-wrapped", 29.5, { note: "1.6 mm iron wire, five turns below the cup" });
  coatBeside(demo, "demo-medals", { number: 10, hoursAgo: 27 });
  coatBeside(demo, "demo-medals", { number: 11, hoursAgo: 3 });
}

function dancer(demo: DemoLog): void {
  const { log } = demo;
  log("piece", "demo-dancer", "piece-started", 290, {
    plan: {
      name: "Demo: dancer",
      material: "resin",
      alloyId: "a356",
      metalKg: 0.9,
      headM: 0.45,
      part: { kind: "round", diameterMm: 60 },
      areaM2: 0.08,
      recipeId: "start-general",
      geometry: "corner",
    },
    roomId: demoRoomId,
  });
  coatByRecipe(demo, "demo-dancer", "start-general", nineCoats);
  sign(demo, "demo-dancer", 47);
  burnout(demo);
}

function bell(demo: DemoLog): void {
  const { log } = demo;
  log("piece", "demo-bell", "piece-started", 314, {
    plan: {
      name: "Demo: small bell",
      material: "wax",
      alloyId: "c90300",
      metalKg: 2.8,
      headM: 0.3,
      part: { kind: "round", diameterMm: 110 },
      areaM2: 0.1,
      recipeId: "start-general",
      geometry: "recess",
    },
    roomId: demoRoomId,
  });
  coatByRecipe(
    demo,
    "demo-bell",
    "start-general",
    nineCoats.map((hours) => hours + 24),
  );
  sign(demo, "demo-bell", 53.5);
  burnOut(demo, "demo-bell", 53);
  log("piece", "demo-bell", "shell-preheated", 45.5, { shellC: 540, note: "in sand at 300 °C" });
  log("piece", "demo-bell", "metal-poured", 45, {
    metalC: 1140,
    shellC: 540,
    massKg: 2.8,
    outOfKilnMin: 2,
  });
  log("piece", "demo-bell", "shell-knocked-out", 43.3, {});
}

/** Signed as it stood, clear, by someone who does not exist. */
export function sign({ log }: DemoLog, id: string, hoursAgo: number): void {
  log("piece", id, "review-signed", hoursAgo, {
    name: "Demo: A. Founder",
    verdict: "clear",
    passed: [],
    safety: null,
  });
}

function burnOut({ log }: DemoLog, id: string, hoursAgo: number): void {
  log("piece", id, "burnout-started", hoursAgo, {});
  log("piece", id, "burnout-read", hoursAgo - 1, { kilnC: 430 });
  log("piece", id, "burnout-read", hoursAgo - 2.5, { kilnC: 760 });
  log("piece", id, "burnout-ended", hoursAgo - 4, { result: "clean" });
  log("piece", id, "shell-fired", hoursAgo - 5.5, { peakC: 860, holdMin: 60 });
}
