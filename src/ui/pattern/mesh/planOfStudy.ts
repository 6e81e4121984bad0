import type { TreeSums } from "../../../geometry/gatingBars.ts";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import type { StudyHollows } from "./studyHollows.ts";
import type { PatternMeasured, PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import { pocketClasses } from "../../../logbook/casting/pocketClass.ts";
import {
  cupLevelOf,
  mmPerUnitOf,
  pointsOf,
  resultsFor,
  treeMisfit,
  type PatternStudy,
} from "./patternStudy.ts";
import { sizeOf } from "./patternSize.ts";
import type { WallNeed } from "./wallNeeds.ts";

/**
 * What a pattern tells of a piece; what it does not know, or what no log would take, is left out. So is what rests on a
 * tree that does not fit, and metal and surface while it is not said what becomes of closed hollows.
 */
export function planOfStudy(study: PatternStudy, need: WallNeed | null): Omit<PiecePlan, "name"> {
  const mmPerUnit = mmPerUnitOf(study);
  const known = {
    patternId: study.id,
    ...(study.material === null ? {} : { material: study.material }),
    ...(study.alloyId === null ? {} : { alloyId: study.alloyId }),
    ...(study.recipeId === null ? {} : { recipeId: study.recipeId }),
  };
  if (mmPerUnit === null) return known;
  const { volumeMm3, gatingMm3, areaMm2, gatingAreaMm2, hollows } = sizeOf(study, mmPerUnit);
  const isFit = treeMisfit(study) === null;
  const metalLitre = volumeMm3 === null || !isFit ? null : round((volumeMm3 + gatingMm3) / 1e6, 4);
  const isAreaKnown = isFit && (hollows === null || hollows.are !== null);
  const areaM2 = isAreaKnown ? round((areaMm2 + gatingAreaMm2) / 1e6, 3) : null;
  const headM = need === null || !isFit ? null : round(need.headMm / 1000, 3);
  const pockets = pocketsOf(study, hollows);
  return {
    ...known,
    ...(within(ranges.metalLitre, metalLitre) ? { metalLitre } : {}),
    ...(within(ranges.areaM2, areaM2) ? { areaM2 } : {}),
    ...(need !== null && within(ranges.headM, headM) ? { headM, part: roundedPart(need.part) } : {}),
    ...(pockets.length > 0 ? { pockets } : {}),
  };
}

/**
 * Drying classes of the pattern's hollows. One that is opened for its core dries like a blind one: its mouth is small for
 * its depth (judgement).
 */
export function pocketsOf({ shape }: PatternStudy, hollows: StudyHollows | null): readonly GeometryClass[] {
  const known = pocketClasses(shape?.recesses ?? []);
  return hollows?.are !== "core" || known.includes("blind") ? known : ["blind", ...known];
}

/** The entry that says what was measured; null while the unit is not known. */
export function measuredOf(study: PatternStudy, photos: readonly string[] = []): PatternMeasured | null {
  const mmPerUnit = mmPerUnitOf(study);
  if (mmPerUnit === null) return null;
  const { measures } = study.found;
  const { volumeMm3, lowMm3, highMm3, patternMm3, areaMm2, boxMm, hollows, tree, gatingAreaMm2 } = sizeOf(
    study,
    mmPerUnit,
  );
  const results = resultsFor(study);
  const thickness = study.shape?.thickness ?? null;
  return {
    patternId: study.id,
    fileName: study.file.name.slice(-200),
    sumsVersion: study.sumsVersion,
    triangles: measures.triangles,
    watertight: measures.watertight,
    mmPerUnit,
    volumeMm3,
    ...(volumeMm3 === null && lowMm3 !== null && lowMm3 >= 0 ? { volumeLowMm3: lowMm3 } : {}),
    ...(volumeMm3 === null && highMm3 !== null && highMm3 >= 0 ? { volumeHighMm3: highMm3 } : {}),
    areaMm2,
    boxMm,
    up: study.up,
    headM: results === null ? null : (cupLevelOf(study, results.highMm) - results.lowMm) / 1000,
    tips: results?.tips.length ?? 0,
    vents: pointsOf(study, "vent").length,
    drains: pointsOf(study, "drain").length,
    trappedMl: results?.held?.air.totalMl ?? null,
    gatingMm3: tree === null ? null : tree.barVolume,
    ...(tree === null ? {} : { gatingAreaMm2, treeModulusMm: thickestOf(tree) }),
    ...(hollows === null ? {} : { hollows: hollows.are ?? "unanswered" }),
    ...(hollows === null || patternMm3 === null ? {} : { patternMm3 }),
    thinnestMm: thickness?.thin[0]?.thickness ?? null,
    thickestMm: thickness?.thick[0]?.diameter ?? null,
    ...(photos.length === 0 ? {} : { photos }),
  };
}

/** Modulus of the bar that freezes last. */
const thickestOf = ({ bars }: TreeSums): number => Math.max(...bars.map(({ modulus }) => modulus));

/** A plan carries no more digits than a print or a wax keeps. */
function round(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

const roundedPart = (part: WallNeed["part"]): WallNeed["part"] =>
  part.kind === "round"
    ? { kind: "round", diameterMm: round(part.diameterMm, 3) }
    : { kind: part.kind, widthMm: round(part.widthMm, 3), lengthMm: round(part.lengthMm, 3) };
