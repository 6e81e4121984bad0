import {
  castingMassBandKg,
  chooseVolume,
  type VolumeChosen,
  type VolumeFound,
} from "../../physics/metal/castingMass.ts";
import {
  patternVolume,
  type PatternVolume,
  type VolumeReading,
  type VolumeRoute,
} from "../../physics/metal/patternVolume.ts";
import { hollowMetalCm3 } from "../../physics/shell/printSolidity.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import { volumeRouteError } from "../../trade/volumeRoutes.ts";
import { kept } from "./limits.ts";
import { massLimits, type MassDraft } from "./massDraft.ts";

export type RouteLine = {
  readonly route: VolumeRoute;
  readonly errorShare: number;
  /** Null where nothing was measured this way. */
  readonly volume: PatternVolume | null;
  readonly mass: { readonly lowKg: number; readonly likelyKg: number; readonly highKg: number } | null;
};

export type MassByRoutes = { readonly lines: readonly RouteLine[]; readonly chosen: VolumeChosen | null };

/** Metal of the casting by every way that was measured, and which of them is used. */
export function massByRoutes({
  draft,
  mesh,
  metalKgM3,
}: {
  readonly draft: MassDraft;
  readonly mesh: PatternMeasured | null;
  readonly metalKgM3: number | null;
}): MassByRoutes {
  const typed = kept(draft, massLimits);
  const volumes: Readonly<Record<VolumeRoute, PatternVolume | null>> = {
    mesh: mesh === null ? null : meshVolume(typed, mesh),
    hydrostatic: read(hydrostatic(typed)),
    displacement: read(displacement(typed)),
    slicer: read(slicer(typed)),
    "pattern-weight": read(weight(typed)),
  };
  const lines = (Object.keys(volumes) as VolumeRoute[]).map((route): RouteLine => {
    const volume = volumes[route];
    const errorShare = volumeRouteError[route].value;
    const found = volume?.ok === true ? { route, volumeCm3: volume.volumeCm3, errorShare } : null;
    return {
      route,
      errorShare,
      volume,
      mass: found === null || metalKgM3 === null ? null : castingMassBandKg({ found, metalKgM3 }),
    };
  });
  return { lines, chosen: chooseVolume(lines.flatMap(foundOf)) };
}

function foundOf({ route, errorShare, volume }: RouteLine): readonly VolumeFound[] {
  return volume?.ok === true && volume.volumeCm3 <= 1e7
    ? [{ route, volumeCm3: volume.volumeCm3, errorShare }]
    : [];
}

const read = (reading: VolumeReading | null): PatternVolume | null =>
  reading === null ? null : patternVolume(reading);

/** A mesh is the outside of a print; one that is left hollow and vented is metal only in its wall. */
function meshVolume({ hollow, hollowWallMm }: MassDraft, mesh: PatternMeasured): PatternVolume {
  const { volumeMm3, areaMm2, hollows } = mesh;
  if (hollows === "unanswered") return { ok: false, route: "mesh", code: "hollow-unanswered" };
  if (volumeMm3 === null || !(volumeMm3 > 0)) return { ok: false, route: "mesh", code: "open-mesh" };
  if (hollow !== "vented-hollow")
    return patternVolume({ route: "mesh", volumeCm3: volumeMm3 / 1000, isClosed: mesh.watertight });
  if (hollowWallMm === null || !(areaMm2 > 0)) return { ok: false, route: "mesh", code: "no-volume" };
  const volumeCm3 = hollowMetalCm3({
    volumeCm3: volumeMm3 / 1000,
    areaCm2: areaMm2 / 100,
    wallMm: hollowWallMm,
    isVented: true,
  });
  return { ok: true, route: "mesh", volumeCm3 };
}

const displacement = ({ displacedG, sinkerDisplacedG, isSealed }: MassDraft): VolumeReading | null =>
  displacedG === null
    ? null
    : {
        route: "displacement",
        displacedG,
        sinkerDisplacedG: sinkerDisplacedG ?? 0,
        isSealed: isSealed === "yes",
      };

const hydrostatic = ({ airG, submergedG, sinkerSubmergedG, isSealed }: MassDraft): VolumeReading | null =>
  airG === null || submergedG === null
    ? null
    : {
        route: "hydrostatic",
        airG,
        submergedG,
        sinkerSubmergedG: sinkerSubmergedG ?? 0,
        isSealed: isSealed === "yes",
      };

const slicer = ({ slicerG, slicerGCm3 }: MassDraft): VolumeReading | null =>
  slicerG === null || slicerGCm3 === null
    ? null
    : { route: "slicer", fullMassG: slicerG, densityKgM3: slicerGCm3 * 1000 };

const weight = ({ patternG, patternGCm3, fill }: MassDraft): VolumeReading | null =>
  patternG === null
    ? null
    : {
        route: "pattern-weight",
        massG: patternG,
        densityKgM3: patternGCm3 === null ? null : patternGCm3 * 1000,
        fill,
      };
