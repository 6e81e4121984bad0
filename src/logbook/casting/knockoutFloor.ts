import { knockoutTime } from "../../physics/heat/knockout.ts";
import { freezeTimeS } from "../../physics/metal/freezing.ts";
import { usualKnockoutMin } from "../../trade/knockoutTime.ts";
import type { ChainSum } from "./chainSum.ts";

export type KnockoutFloor = {
  /** Freezing of the casting's thickest section, s; null where no section of it is known. */
  readonly castingS: number | null;
  /** Freezing of the last part of all, gating too, s; null where none is known. */
  readonly lastS: number | null;
  /** Not out of the shell before, s: ten freezings of the thickest section (common practice, no source). */
  readonly notBeforeS: number;
  /** Where the thickest place was not measured the usual hour is the least. */
  readonly isUsualLeast: boolean;
};

/** Thickest wall the freezing law is asked for, mm. */
const mostMm = 400;

/**
 * The least time before a casting is knocked out, from its thickest section: those entered and, off the mesh, its
 * thickest place, mm. A drawn tree whose cup is thicker, by its modulus in mm, freezes last of all, as at the pour.
 */
export function knockoutFloor(
  sum: ChainSum | null,
  thickestMm: number | null,
  treeModulusMm: number | null = null,
): KnockoutFloor {
  const usualS = usualKnockoutMin.value * 60;
  if (sum === null) return { castingS: null, lastS: null, notBeforeS: usualS, isUsualLeast: true };
  const { links } = sum.chain;
  const isMeasured = thickestMm !== null && thickestMm > 0;
  const ofMesh = isMeasured ? [freezeTimeS({ ...sum.law, modulusMm: Math.min(mostMm, thickestMm) / 2 })] : [];
  const ofCasting = [
    ...links.filter(({ role }) => role === "casting").map(({ freezeS }) => freezeS),
    ...ofMesh,
  ];
  const castingS = ofCasting.length === 0 ? null : Math.max(...ofCasting);
  const treeS =
    treeModulusMm === null
      ? 0
      : freezeTimeS({ ...sum.law, modulusMm: Math.min(mostMm / 2, Math.max(0, treeModulusMm)) });
  const lastS = Math.max(...links.map(({ freezeS }) => freezeS), castingS ?? 0, treeS);
  const { timeS } = knockoutTime({ freezeS: castingS ?? lastS, coolS: null });
  const leastS = Math.max(timeS, lastS, 60);
  return {
    castingS,
    lastS,
    notBeforeS: isMeasured ? leastS : Math.max(leastS, usualS),
    isUsualLeast: !isMeasured,
  };
}
