import { castingCooling, type CastingTimes } from "../physics/castingCooling.ts";
import { wallCooling, type WallTemperature } from "../physics/heat.ts";
import { latestPour, type LatestPour } from "../physics/latestPour.ts";
import { meltCoolKPerMin, pourOrder, type PourOrder } from "../physics/pourOrder.ts";
import type { Alloy } from "../trade/alloys.ts";
import { knockoutHeatOf } from "../trade/knockoutHeat.ts";
import type { MeltFigures } from "../trade/meltFigures.ts";
import { leastShellC } from "../trade/practice.ts";
import { preheatOf } from "../trade/preheat.ts";
import type { Published } from "../trade/published.ts";
import { coolingHeatOf, type StuccoFamily } from "../trade/shellThermal.ts";
import type { PourBodies } from "./fireBodies.ts";
import type { Standing } from "./standing.ts";

/** What a pour needs of one shell. */
export type PourShell = {
  readonly id: string;
  readonly name: string;
  readonly wallMm: number;
  readonly thinnestMm: number | null;
  readonly thinnestFrom: "told" | "mesh" | null;
  /** Volume over cooled area of its thickest section, mm; null where neither mesh nor plan tells it. */
  readonly modulusMm: number | null;
  /** `thinnest`: only the thinnest section is known, so the rest freezes later than is reckoned. */
  readonly modulusFrom: "mesh" | "volume" | "thinnest" | null;
  readonly metalKg: number | null;
};

const startingWallMm = 8;

export function pourShell(
  { piece, wall }: Standing,
  {
    toldMm,
    metalKg,
    alloy,
  }: { readonly toldMm: number | null; readonly metalKg: number | null; readonly alloy: Alloy | null },
): PourShell {
  const meshMm = piece.patterns.at(-1)?.thinnestMm ?? null;
  const fromMesh = meshMm !== null && meshMm > 0 ? meshMm : null;
  const thinnestMm = toldMm ?? fromMesh;
  return {
    id: piece.id,
    name: piece.plan.name,
    wallMm: wall.reachedMm > 0.5 ? Math.min(60, wall.reachedMm) : startingWallMm,
    thinnestMm,
    thinnestFrom: toldMm !== null ? "told" : fromMesh !== null ? "mesh" : null,
    ...modulusOf(piece, { thinnestMm, metalKg, alloy }),
    metalKg,
  };
}

/** The thickest section's on the mesh, else the mean one by volume and area, else the thinnest section's. */
function modulusOf(
  { plan, patterns }: Standing["piece"],
  {
    thinnestMm,
    metalKg,
    alloy,
  }: { readonly thinnestMm: number | null; readonly metalKg: number | null; readonly alloy: Alloy | null },
): Pick<PourShell, "modulusMm" | "modulusFrom"> {
  const within = (mm: number): number => Math.min(200, Math.max(0.2, mm));
  const thickMm = patterns.at(-1)?.thickestMm ?? null;
  if (thickMm !== null && thickMm > 0) return { modulusMm: within(thickMm / 2), modulusFrom: "mesh" };
  const litre =
    plan.metalLitre ?? (metalKg === null || alloy === null ? null : (metalKg / alloy.solidKgM3.value) * 1000);
  if (litre !== null && plan.areaM2 !== undefined && plan.areaM2 > 0)
    return { modulusMm: within(litre / plan.areaM2), modulusFrom: "volume" };
  return thinnestMm === null
    ? { modulusMm: null, modulusFrom: null }
    : { modulusMm: within(thinnestMm / 2), modulusFrom: "thinnest" };
}

/** How the shell stands between kiln and metal. */
export type ShellBed = {
  readonly bed: PourBodies["pour-planned"]["bed"];
  readonly sandC?: number | undefined;
  readonly airC: number;
  readonly family: StuccoFamily;
};

const coolMinutes = 20;

/** The cavity's face minute by minute after the kiln's door. */
export const shellCooling = ({
  wallMm,
  startC,
  bed,
  sandC,
  airC,
  family,
}: ShellBed & { readonly wallMm: number; readonly startC: number }): readonly WallTemperature[] =>
  wallCooling({
    ...coolingHeatOf(family),
    wallMm,
    startC,
    airC,
    minutes: coolMinutes,
    outside: bed,
    ...(bed === "hot-sand" && sandC !== undefined ? { sandC } : {}),
  });

const belowUsualK = 100;

/**
 * Least heat of the cavity's face when metal comes, °C: the least of the metal's family, and for thin sections 100 K
 * below what is usual for them (judgement). Null for metals with no known practice.
 */
export function leastFaceC(alloy: Alloy, thinnestMm: number | null): Published | null {
  const family = leastShellC[alloy.family];
  const usual = thinnestMm === null ? null : preheatOf({ alloy, wallMm: thinnestMm });
  if (usual === null) return family;
  const thin = usual.value.lowC - belowUsualK;
  if (family !== null && family.value >= thin) return family;
  return { value: thin, source: `judgement: 100 K below what is usual for the section (${usual.source})` };
}

/** The shell's latest minute out of the kiln; null where no least heat is known. */
export function latestOf(rows: readonly WallTemperature[], leastC: number | null): LatestPour | null {
  return leastC === null ? null : latestPour({ rows, leastShellC: leastC });
}

/** The face after some minutes, °C, straight between the rows. */
export function faceAt(
  rows: readonly WallTemperature[],
  minute: number,
): { readonly likelyC: number; readonly lowC: number; readonly highC: number } | null {
  const after = rows.findIndex((row) => row.minute >= minute);
  const to = rows[after];
  if (to === undefined || minute < 0) return null;
  const from = rows[after - 1] ?? to;
  const share = to.minute === from.minute ? 0 : (minute - from.minute) / (to.minute - from.minute);
  const between = (a: number, b: number): number => a + share * (b - a);
  return {
    likelyC: between(from.cavityFaceC, to.cavityFaceC),
    lowC: between(from.cavityFaceLowC, to.cavityFaceLowC),
    highC: between(from.cavityFaceHighC, to.cavityFaceHighC),
  };
}

const hottestC = 1150;

/** Heat to leave the kiln with so that the face is likely at `aimC` after so many minutes; null where no shell bears it. */
export function leaveKilnC(
  of: ShellBed & { readonly wallMm: number; readonly aimC: number; readonly minutes: number },
): number | null {
  const short = (startC: number): number =>
    (faceAt(shellCooling({ ...of, startC }), of.minutes)?.likelyC ?? of.aimC) - of.aimC;
  if (short(hottestC) < 0) return null;
  let [low, high] = [of.aimC, hottestC];
  // To about a kelvin: no kiln is read closer.
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (short(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}

/** Metal this far over its liquidus still fills a shell, K: common practice, no source; 60–180 K is usual. */
const leastSuperheatK = 60;
/** Skin on a skimmed melt: judgement, between bright and oxidised copper. */
const meltEmissivity = 0.5;

/** How fast the metal cools once the crucible is out: its open face taken as a crucible's as deep as it is wide. */
export function metalCooling(of: {
  readonly metalKg: number;
  readonly metalC: number;
  readonly airC: number;
  readonly figures: MeltFigures;
}): number {
  const m3 = of.metalKg / of.figures.crucibleKgM3.value;
  const acrossM = Math.cbrt((4 * m3) / Math.PI);
  return meltCoolKPerMin({
    metalKg: of.metalKg,
    heatJKgK: of.figures.liquidHeatJKgK.value,
    metalC: of.metalC,
    airC: of.airC,
    bareM2: (Math.PI * acrossM ** 2) / 4,
    emissivity: meltEmissivity,
  });
}

/** Thinnest section where nobody said, mm: starting value. */
export const startingSectionMm = 5;

/** The best order for these shells and whether metal and heat last; null while a mass or the metal isn't known. */
export function shellsInOrder({
  shells,
  metalKg,
  metalC,
  shellC,
  carryMin,
  alloy,
  figures,
  place,
}: {
  readonly shells: readonly PourShell[];
  readonly metalKg: number | null;
  readonly metalC: number;
  readonly shellC: number;
  readonly carryMin: number;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly place: ShellBed;
}): PourOrder | null {
  if (metalKg === null || !(metalKg > 0) || metalC < 100 || shells.length === 0) return null;
  if (shells.some((shell) => shell.metalKg === null)) return null;
  return pourOrder({
    shells: shells.map((shell) => {
      const leastC = leastFaceC(alloy, shell.thinnestMm)?.value ?? null;
      const rows = shellCooling({ ...place, wallMm: shell.wallMm, startC: shellC });
      return {
        id: shell.id,
        metalKg: shell.metalKg ?? 0,
        thinnestMm: shell.thinnestMm ?? startingSectionMm,
        pourMin: carryMin + 0.2,
        leastMetalC: alloy.liquidusC.value + leastSuperheatK,
        latestMin: latestOf(rows, leastC)?.surelyMin ?? null,
      };
    }),
    metalKg,
    metalC,
    meltCoolKPerMin: metalCooling({ metalKg, metalC, airC: place.airC, figures }),
    outTogether: false,
  });
}

/** When the metal in a shell is frozen and cold enough to break out; null where its sections aren't known. */
export function castingTimesOf({
  shell,
  alloy,
  figures,
  metalC,
  faceC,
  place,
}: {
  readonly shell: PourShell;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly metalC: number;
  /** The shell when metal came. */
  readonly faceC: number;
  readonly place: ShellBed;
}): CastingTimes | null {
  if (shell.modulusMm === null) return null;
  const { conductivityWMK, densityKgM3, heatJKgK, emissivity } = coolingHeatOf(place.family);
  return castingCooling({
    metal: {
      densityKgM3: figures.crucibleKgM3.value,
      solidusC: alloy.solidusC.value,
      liquidusC: alloy.liquidusC.value,
      latentJKg: figures.latentJKg.value,
      solidJKgK: figures.solidHeatJKgK.value,
      liquidJKgK: figures.liquidHeatJKgK.value,
    },
    modulusMm: shell.modulusMm,
    pourC: Math.min(1900, Math.max(alloy.liquidusC.value, metalC)),
    shellMm: shell.wallMm,
    shellC: Math.min(1300, Math.max(-20, faceC)),
    conductivityWMK,
    shellKgM3: densityKgM3,
    shellJKgK: heatJKgK,
    emissivity,
    airC: place.airC,
    around: place.bed === "air" ? "air" : "sand",
    sandC: place.bed === "hot-sand" ? place.sandC : undefined,
    knockoutC: knockoutHeatOf(alloy).value,
  });
}
