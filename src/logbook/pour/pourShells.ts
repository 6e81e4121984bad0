import { castingCooling, type CastingTimes } from "../../physics/heat/castingCooling.ts";
import { meltCoolKPerMin, pourOrder, type PourOrder } from "../../physics/metal/pourOrder.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import { shellThermal } from "../../trade/shellThermal.ts";
import { pourHeatOf } from "./pourHeat.ts";
import { startingSectionMm } from "../fire/shellHeat.ts";
import { coolingWall, mayBeOut, minutesToFull, type ShellBed } from "../fire/shellOut.ts";
import { metalLitreOf } from "../piece/pieceMetal.ts";
import type { Standing } from "../piece/standing.ts";

/** What a pour needs of one shell. */
export type PourShell = {
  readonly id: string;
  readonly name: string;
  readonly wallMm: number;
  /** False where the log has no wall and the starting one is calculated with. */
  readonly isWallKnown: boolean;
  readonly thinnestMm: number | null;
  readonly thinnestFrom: "told" | "mesh" | null;
  /** Volume over cooled area of its thickest place known, mm; null where neither mesh nor plan tells of one. */
  readonly modulusMm: number | null;
  /** By `volume` it is the mean section, by `thinnest` the thinnest: then some of it freezes later than the sum says. */
  readonly modulusFrom: "mesh" | "volume" | "thinnest" | null;
  readonly metalKg: number | null;
};

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
  const { wallMm, isKnown } = coolingWall(wall);
  return {
    id: piece.id,
    name: piece.plan.name,
    wallMm,
    isWallKnown: isKnown,
    thinnestMm,
    thinnestFrom: toldMm !== null ? "told" : fromMesh !== null ? "mesh" : null,
    ...withTree(modulusOf(piece, { thinnestMm, alloy }), piece.patterns.at(-1)?.treeModulusMm),
    metalKg,
  };
}

/** The thickest place on the mesh, else the mean section by volume and area, and never less than the thinnest section. */
function modulusOf(
  { plan, patterns }: Standing["piece"],
  { thinnestMm, alloy }: { readonly thinnestMm: number | null; readonly alloy: Alloy | null },
): Pick<PourShell, "modulusMm" | "modulusFrom"> {
  // A section that was entered as the thinnest is a place that is so thick.
  const leastMm = (thinnestMm ?? 0) / 2;
  const within = (mm: number): number => Math.min(200, Math.max(0.2, leastMm, mm));
  const thickMm = patterns.at(-1)?.thickestMm ?? null;
  if (thickMm !== null && thickMm > 0) return { modulusMm: within(thickMm / 2), modulusFrom: "mesh" };
  const litre = metalLitreOf({ plan }, alloy);
  if (litre !== null && plan.areaM2 !== undefined && plan.areaM2 > 0)
    return { modulusMm: within(litre / plan.areaM2), modulusFrom: "volume" };
  return thinnestMm === null
    ? { modulusMm: null, modulusFrom: null }
    : { modulusMm: within(leastMm), modulusFrom: "thinnest" };
}

/** Of casting and tree, what freezes last: a cup is often thicker than the piece. */
const withTree = <T extends Pick<PourShell, "modulusMm">>(of: T, treeMm: number | undefined): T =>
  of.modulusMm === null || treeMm === undefined
    ? of
    : { ...of, modulusMm: Math.max(of.modulusMm, Math.min(200, treeMm)) };

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

type InOrder = {
  readonly shells: readonly PourShell[];
  readonly metalKg: number | null;
  readonly metalC: number;
  readonly shellC: number;
  readonly carryMin: number;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly place: ShellBed;
};

/** The best order for these shells and whether metal and heat last; null while a mass or the metal isn't known. */
export const shellsInOrder = (of: InOrder): PourOrder | null =>
  inOrder(of, ({ wallMm, thinnestMm }) => {
    const { place, alloy, shellC } = of;
    const out = mayBeOut({ ...place, wallMm, thinnestMm, alloy, startC: shellC });
    return out?.latest.likelyMin ?? null;
  });

function inOrder(
  { shells, metalKg, metalC, carryMin, alloy, figures, place }: Omit<InOrder, "shellC">,
  latestOf: (shell: PourShell) => number | null,
): PourOrder | null {
  if (metalKg === null || !(metalKg > 0) || metalC < 100 || shells.length === 0) return null;
  if (shells.some((shell) => shell.metalKg === null)) return null;
  return pourOrder({
    shells: shells.map((shell) => ({
      id: shell.id,
      metalKg: shell.metalKg ?? 0,
      thinnestMm: shell.thinnestMm ?? startingSectionMm,
      pourMin: minutesToFull(carryMin),
      leastMetalC: pourHeatOf({ alloy, figures, thinnestMm: shell.thinnestMm }).leastC,
      latestMin: latestOf(shell),
    })),
    metalKg,
    metalC,
    meltCoolKPerMin: metalCooling({ metalKg, metalC, airC: place.airC, figures }),
    outTogether: false,
  });
}

/** How far the metal falls short of what the last shells need, K, when it is poured at `metalC`; null where that isn't known. */
export function metalColdByK(of: Omit<InOrder, "shellC">): number | null {
  const order = inOrder(of, () => null);
  if (order === null) return null;
  const { alloy, figures, shells } = of;
  const short = order.turns.map(({ id, metalC }) => {
    const thinnestMm = shells.find((shell) => shell.id === id)?.thinnestMm ?? null;
    return pourHeatOf({ alloy, figures, thinnestMm }).leastC - metalC;
  });
  return Math.max(0, ...short);
}

const heatStepC = 5;

/** The least heat in the crucible, °C, from `fromC` up to `mostC`, that lasts until the last shell is full; null where none does. */
export function metalHotEnoughC(
  of: Omit<InOrder, "shellC" | "metalC">,
  { fromC, mostC }: { readonly fromC: number; readonly mostC: number },
): number | null {
  const above = (Math.floor(fromC / heatStepC) + 1) * heatStepC;
  const steps = Math.max(0, Math.floor((mostC - above) / heatStepC) + 1);
  const tried = [fromC, ...Array.from({ length: steps }, (_, i) => above + i * heatStepC), mostC];
  return tried.find((metalC) => metalC <= mostC && metalColdByK({ ...of, metalC }) === 0) ?? null;
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
  const { conductivityWMK, densityKgM3, hotHeatJKgK, emissivity } = shellThermal[place.family];
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
    conductivityWMK: conductivityWMK.value,
    shellKgM3: densityKgM3.value,
    shellJKgK: hotHeatJKgK.value,
    emissivity: emissivity.value,
    airC: place.airC,
    around: place.bed === "air" ? "air" : "sand",
    sandC: place.bed === "hot-sand" ? place.sandC : undefined,
    knockoutC: alloy.knockout.value,
  });
}
