import type { DippedFrom } from "../logbook/dippedFrom.ts";
import type { Standing } from "../logbook/standing.ts";
import type { Level } from "./finding.ts";
import { figure } from "./finding.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Variant = VariantOf<"dipped-from-unfit-bucket">;

const levels: Readonly<Record<Variant, Level>> = {
  unfit: "watch",
  "unfit-accepted": "watch",
  watched: "note",
  "not-checked": "note",
};
const source = "common practice, no source; the bucket's own limits";

/**
 * A coat came from a bucket that was not to be dipped from, was to be watched, or that nobody had read for half a day.
 * A bucket that had never been read, made up or looked at by then is silent: there is nothing to judge it by.
 */
export function dippedFromUnfitBucket({
  dippedFrom,
}: Pick<Standing, "dippedFrom">): readonly FindingOf<"dipped-from-unfit-bucket">[] {
  const variants = Object.keys(levels) as Variant[];
  return variants.flatMap((variant) => {
    const dips = dippedFrom.filter((dip) => variantOf(dip) === variant);
    const ids = [...new Set(dips.map(({ bucket }) => bucket.id))];
    return ids.map((id) =>
      finding(
        variant,
        dips.filter(({ bucket }) => bucket.id === id),
      ),
    );
  });
}

function variantOf({ health, reason }: DippedFrom): Variant | null {
  switch (health.level) {
    case "fit":
      return null;
    case "watch":
      return "watched";
    case "not-checked":
      return "not-checked";
    case "do-not-dip":
      return reason === null ? "unfit" : "unfit-accepted";
  }
}

function finding(variant: Variant, dips: readonly DippedFrom[]): FindingOf<"dipped-from-unfit-bucket"> {
  const spoken = variant === "not-checked" ? [] : dips.flatMap(({ health }) => health.reasons);
  const heavy = variant === "watched" ? "watch" : "do-not-dip";
  const codes = new Set(spoken.filter(({ level }) => level === heavy).map(({ code }) => code));
  const reason = dips.findLast((dip) => dip.reason !== null)?.reason;
  return {
    rule: "dipped-from-unfit-bucket",
    variant,
    level: levels[variant],
    figures: { count: figure(dips.length, "count") },
    texts: {
      bucket: dips.at(-1)?.bucket.name ?? "",
      which: dips.map(({ coat }) => coat.number).join(", "),
      codes: [...codes].join(" "),
      ...(reason == null ? {} : { reason }),
    },
    entries: dips.map(({ coat }) => coat.id),
    source,
  };
}
