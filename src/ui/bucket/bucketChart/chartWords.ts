import type { BucketSegment } from "../../../logbook/bucket/bucketChart.ts";
import type { ChartBasis } from "../../../physics/slurry/controlChart.ts";
import type { ChartRule, ChartSignal } from "../../../physics/slurry/controlRules.ts";

/** What a rule saw, in one sentence. */
export function signalSays({ rule, side }: ChartSignal): string {
  const where = side === "above" ? "above" : "below";
  switch (rule) {
    case 1:
      return `One reading lies ${where} the outer control limit. Something has changed.`;
    case 2:
      return `Two of three readings lie far ${where} the middle line, past two thirds of the way to the limit.`;
    case 3:
      return `Four of five readings lie ${where} the middle line by more than a third of the way to the limit.`;
    case 4:
      return `Eight readings in a row lie ${where} the middle line: its level has moved.`;
    case 5:
      return `Six readings in a row are ${side === "rising" ? "rising" : "falling"}: it is drifting.`;
  }
}

/** What to look at first. Nothing here says what to add: the make-up page reckons that from the density. */
export function checkFirst({ side }: ChartSignal): string {
  return side === "above" || side === "rising"
    ? "Thicker than it was. Check the temperature, then rinse the cup and check its hole, then weigh the density. Add water only if the density is too high. If the density is right, don’t thin it: do a gel test."
    : "Thinner than it was. Stir from the bottom and check again: settled flour and foam both read thin. Then weigh the density. Added water or a worn cup also reads thin.";
}

export const ruleName: Readonly<Record<ChartRule, string>> = {
  1: "beyond the limit",
  2: "two of three far out",
  3: "four of five out",
  4: "eight on one side",
  5: "six in a row one way",
};

export const basisSays: Readonly<Record<ChartBasis, string>> = {
  "too-few": "Limits are drawn from ten checks on.",
  provisional: "Provisional limits: they move with each check and freeze at twenty.",
  frozen: "Limits frozen on the first twenty checks of this batch and cup.",
};

const began: Readonly<Record<BucketSegment["because"], string>> = {
  first: "the first checks",
  "new-batch": "a new batch",
  "other-cup": "another cup",
};

/** A stretch of the chart as one may choose it: what began it, its cup and how many readings it has. */
export const segmentName = ({ because, cup, points }: BucketSegment): string =>
  [`From ${began[because]}`, cup?.name, `${points.length} ${points.length === 1 ? "reading" : "readings"}`]
    .filter((word) => word !== undefined)
    .join(" · ");
