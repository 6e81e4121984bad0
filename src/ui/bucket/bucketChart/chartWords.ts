import type { BucketSegment } from "../../../logbook/bucket/bucketChart.ts";
import type { ChartBasis } from "../../../physics/slurry/controlChart.ts";
import type { ChartRule, ChartSignal } from "../../../physics/slurry/controlRules.ts";

/** What a rule saw, in one sentence. */
export function signalSays({ rule, side }: ChartSignal): string {
  const where = side === "above" ? "above" : "below";
  switch (rule) {
    case 1:
      return `One reading lies ${where} the outer control limit: this bucket does not do that by itself.`;
    case 2:
      return `Two of three readings lie far ${where} the middle line, beyond two thirds of the way to the limit.`;
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
    ? "Slower than it was. Look at the temperature first, then rinse and check the cup’s hole, then weigh the density: only a density that is too high asks for water. With the density right, don’t thin it; do a gel test."
    : "Faster than it was. Stir from the bottom and read again; settled flour and foam both read thin. Then weigh the density, and think of water that was added or a cup that was worn or scoured.";
}

export const ruleName: Readonly<Record<ChartRule, string>> = {
  1: "beyond the limit",
  2: "two of three far out",
  3: "four of five out",
  4: "eight on one side",
  5: "six in a row one way",
};

export const basisSays: Readonly<Record<ChartBasis, string>> = {
  "too-few": "Limits are drawn from ten readings on; until then this is a list with a picture.",
  provisional: "Provisional limits: they still move with each reading, and freeze at twenty.",
  frozen: "Limits frozen on the first twenty readings of this batch and cup.",
};

const began: Readonly<Record<BucketSegment["because"], string>> = {
  first: "the first readings",
  "new-batch": "a new batch",
  "other-cup": "another cup",
};

/** A stretch of the chart as one may choose it: what began it, its cup and how many readings it has. */
export const segmentName = ({ because, cup, points }: BucketSegment): string =>
  [`From ${began[because]}`, cup?.name, `${points.length} ${points.length === 1 ? "reading" : "readings"}`]
    .filter((word) => word !== undefined)
    .join(" · ");
