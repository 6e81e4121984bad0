import { fillTimeS } from "../../physics/metal/flow.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { fillFactorOfWall, fillFactors, handPourKgS } from "../../trade/gatingFigures.ts";

export type FillTime = {
  readonly by: "gate" | "metal" | "wall" | "freezing" | "hand";
  readonly lowS: number;
  readonly highS: number;
  readonly source: string;
};

/** Every way to reckon how long a fill should take; the freezing one is the most it may. */
export function fillTimes({
  massKg,
  gate,
  alloy,
  wallMm,
  runTimeS,
}: {
  readonly massKg: number;
  readonly gate: "top" | "bottom" | "parting";
  readonly alloy: Alloy;
  readonly wallMm: number | null;
  readonly runTimeS: number | null;
}): readonly FillTime[] {
  const byFactor = (
    by: FillTime["by"],
    factor: { readonly value: number; readonly source: string } | null,
  ) => {
    const timeS = factor === null ? null : fillTimeS({ by: "mass", massKg, factor: factor.value });
    return timeS === null || factor === null
      ? []
      : [{ by, lowS: timeS, highS: timeS, source: `t = ${factor.value} × mass^⅓, ${factor.source}` }];
  };
  const metalFactor = alloy.fill === null ? null : fillFactors[alloy.fill];
  const half = runTimeS === null ? null : fillTimeS({ by: "freezing", runTimeS });
  const hand = (rateKgS: number): number => fillTimeS({ by: "ladle", massKg, rateKgS }) ?? 0;
  return [
    ...byFactor("wall", wallMm === null ? null : fillFactorOfWall(wallMm)),
    ...byFactor("gate", fillFactors[gate === "top" ? "top" : "bottom"]),
    ...byFactor("metal", metalFactor),
    ...(half === null
      ? []
      : [
          {
            by: "freezing" as const,
            lowS: half,
            highS: half,
            source: "half of the time a stream runs in that wall; common practice, no source",
          },
        ]),
    {
      by: "hand",
      lowS: hand(handPourKgS.value.high),
      highS: hand(handPourKgS.value.low),
      source: `a hand gives ${handPourKgS.value.low} to ${handPourKgS.value.high} kg/s from a crucible of 4 to 6 kg; ${handPourKgS.source}`,
    },
  ];
}

/** What to plan with unless the maker says otherwise: by the wall, else by the gate, and never longer than freezing allows. */
export function plannedFillS(times: readonly FillTime[]): number | null {
  const by = (which: FillTime["by"]): number | undefined => times.find((time) => time.by === which)?.lowS;
  const wanted = by("wall") ?? by("gate");
  if (wanted === undefined) return null;
  return Math.max(0.2, Math.min(wanted, by("freezing") ?? Infinity));
}
