import type { WallWays } from "../physics/shell/wallWays.ts";
import { sandCoverMm } from "../trade/wallFigures.ts";
import { figure, type Figure } from "./finding.ts";

/** Each way that would make a wall carry is a figure; one that is none has no value. */
export function wayFigures(ways: WallWays): Readonly<Record<string, Figure>> {
  const { coats, ribEveryMm, sandCoats, headM, lyingHeadM, panels } = ways;
  return {
    moreCoats: figure(coats, "count"),
    ribEveryMm: figure(ribEveryMm, "mm"),
    sandCoats: figure(sandCoats, "count"),
    sandCoverMm: figure(sandCoverMm.value, "mm"),
    headM: figure(headM, "m"),
    lyingHeadM: figure(lyingHeadM, "m"),
    panels: figure(panels?.count ?? null, "count"),
    panelWidthMm: figure(panels?.widthMm ?? null, "mm"),
    panelLengthMm: figure(panels?.lengthMm ?? null, "mm"),
  };
}
