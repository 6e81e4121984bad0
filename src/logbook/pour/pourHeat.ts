import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import type { Published } from "../../trade/published.ts";

/** Thinnest section from which the range of heavy work counts, mm; the limit itself is heavy. */
export const heavyFromMm: Published = {
  value: 8,
  basis: "judgement",
  source: "judgement; data sheets print light and heavy work without a section",
};
/** Metal this far over its liquidus still fills a thin shell, K. */
export const fillsAboveK: Published = {
  value: 60,
  basis: "practice",
  source: "common practice, no source; 60–180 K is usual",
};
/** Heavy work starts up to this far over the liquidus, K, though never above the middle of its range. */
export const startAboveK: Published = {
  value: 90,
  basis: "judgement",
  source: "judgement; 60–180 K is usual, and metal loses 20 to 40 K on its way to the wall",
};
/** Below this much over its liquidus nothing is poured, K, whatever a range says. */
export const pouredAboveK: Published = { value: 10, basis: "judgement", source: "judgement, no source" };

type Of = {
  readonly alloy: Alloy;
  /** For the range of heavy work; without them the light one stands for both. */
  readonly figures: Pick<MeltFigures, "heavyLowC" | "heavyHighC"> | null;
  /** Thinnest section, mm; null where nobody measured it, and the light range counts. */
  readonly thinnestMm: number | null;
};

export type PourHeat = {
  readonly work: "light" | "heavy";
  readonly lowC: number;
  readonly highC: number;
  /** Colder than this it may not fill. */
  readonly leastC: number;
  /** Where a plan starts, to whole degrees: the low end, for the ranges are from sand practice and a hot shell needs less. */
  readonly startC: number;
  /** Which of these set it: the low end of the range, the superheat of heavy work, or the least that fills. */
  readonly startFrom: "low-end" | "superheat" | "least";
};

/** Pouring range of a metal for its thinnest section, °C, and where to start in it. */
export function pourHeatOf({ alloy, figures, thinnestMm }: Of): PourHeat {
  const isHeavy = figures !== null && thinnestMm !== null && thinnestMm >= heavyFromMm.value;
  const lowC = isHeavy ? figures.heavyLowC.value : alloy.pourLowC.value;
  const highC = isHeavy ? figures.heavyHighC.value : alloy.pourHighC.value;
  const liquidusC = alloy.liquidusC.value;
  const leastC = Math.max(liquidusC + pouredAboveK.value, Math.min(liquidusC + fillsAboveK.value, lowC));
  // The low end of a heavy range can lie near the liquidus, and metal cools on its way to an 8 mm wall.
  // A shop that sets one range for all work means its low end.
  const superheatedC =
    isHeavy && lowC !== alloy.pourLowC.value
      ? Math.floor(Math.min(liquidusC + startAboveK.value, (lowC + highC) / 2))
      : lowC;
  const startC = Math.max(lowC, superheatedC, Math.min(highC, leastC));
  return {
    work: isHeavy ? "heavy" : "light",
    lowC,
    highC,
    leastC,
    startC,
    startFrom: startC === lowC ? "low-end" : startC === superheatedC ? "superheat" : "least",
  };
}

export type PourHeatCheck =
  | { readonly is: "ok" }
  | { readonly is: "too-cold"; readonly byK: number; readonly leastC: number }
  | { readonly is: "too-hot"; readonly byK: number; readonly mostC: number };

/** Metal at `metalC`, °C, against both ends of what its section takes. */
export function pourHeatCheck({ metalC, ...of }: Of & { readonly metalC: number }): PourHeatCheck {
  const { leastC, highC, startC } = pourHeatOf(of);
  const mostC = Math.max(highC, startC);
  if (metalC < leastC) return { is: "too-cold", byK: leastC - metalC, leastC };
  return metalC > mostC ? { is: "too-hot", byK: metalC - mostC, mostC } : { is: "ok" };
}
