import { fillTimeS } from "../../physics/metal/flow.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { fillFactorOfWall, fillFactors, pourRateKgS, type PourWay } from "../../trade/gatingFigures.ts";
import { pourWayOf } from "../pour/pourWay.ts";

export type FillTime = {
  readonly by: "gate" | "metal" | "wall" | "freezing" | PourWay;
  readonly lowS: number;
  readonly highS: number;
  readonly source: string;
};

export type FillTimes = {
  /** Every way to calculate it; the freezing one is the most it may be. */
  readonly rows: readonly FillTime[];
  readonly way: PourWay;
  /** The quickest that way of pouring gives. */
  readonly leastS: number;
  /** What to plan with unless the maker says otherwise. */
  readonly plannedS: number;
};

/** Shortest fill that is planned, s: nobody pours a mould full in less (judgement). */
export const shortestS = 2;
/** Share of the time the thinnest section allows that is planned with: judgement. */
const plannedShare = 0.9;

/**
 * How long a fill should take and may take. Planned: by the wall, else by the gate, no longer than the thinnest section
 * allows, but never quicker than the way of pouring usually gives. `mostS`: the most the thinnest section allows.
 */
export function fillTimes({
  massKg,
  gate,
  alloy,
  wallMm,
  mostS,
}: {
  readonly massKg: number;
  readonly gate: "top" | "bottom" | "parting";
  readonly alloy: Alloy;
  readonly wallMm: number | null;
  readonly mostS: number | null;
}): FillTimes {
  const byFactor = (
    by: FillTime["by"],
    factor: { readonly value: number; readonly source: string } | null,
  ): readonly FillTime[] => {
    const timeS = factor === null ? null : fillTimeS({ by: "mass", massKg, factor: factor.value });
    return timeS === null || factor === null
      ? []
      : [{ by, lowS: timeS, highS: timeS, source: `t = ${factor.value} × mass^⅓, ${factor.source}` }];
  };
  const way = pourWayOf(massKg, alloy);
  const { value: rate, source } = pourRateKgS[way];
  const poured = (rateKgS: number): number => fillTimeS({ by: "ladle", massKg, rateKgS }) ?? 0;
  const byWall = byFactor("wall", wallMm === null ? null : fillFactorOfWall(wallMm));
  const byGate = byFactor("gate", fillFactors[gate === "top" ? "top" : "bottom"]);
  const wantedS = byWall[0]?.lowS ?? byGate[0]?.lowS ?? 0;
  const leastS = Math.max(shortestS, poured(rate.high));
  return {
    rows: [
      ...byWall,
      ...byGate,
      ...byFactor("metal", alloy.fill === null ? null : fillFactors[alloy.fill]),
      ...(mostS === null
        ? []
        : [
            {
              by: "freezing" as const,
              lowS: mostS,
              highS: mostS,
              source: "the low end of the time the front has in the thinnest section",
            },
          ]),
      {
        by: way,
        lowS: leastS,
        highS: poured(rate.low),
        source: `${rate.low} to ${rate.high} kg/s; ${source}`,
      },
    ],
    way,
    leastS,
    plannedS: Math.max(shortestS, poured(rate.likely), Math.min(wantedS, plannedShare * (mostS ?? Infinity))),
  };
}
