import { Link } from "wouter";
import { bucketStandingOf } from "../../../logbook/bucket/bucketStanding.ts";
import { dipsFrom } from "../../../logbook/bucket/dippedOut.ts";
import type { TakenData } from "../../../storage/taken.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { bucketLeftOf } from "./bucketLeftOf.ts";
import { leftText } from "./leftText.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

/** How far the slurry in each bucket goes. */
export function BucketsLeftCard({ data, now }: { readonly data: TakenData; readonly now: number }) {
  const format = useFormat();
  const { taken, buckets, shop, gains } = data;
  const rows = [...buckets.values()].flatMap((bucket) => {
    if (bucket.retired) return [];
    const standing = bucketStandingOf(bucket, shop, now, dipsFrom(taken, bucket.id));
    if (standing.isUntold) return [];
    const { volume } = standing;
    const left = bucketLeftOf(standing, data);
    return [{ bucket, volume, left }];
  });
  if (rows.length === 0) return null;
  const weighed = [...gains.keys()];
  return (
    <Card title="In the buckets">
      <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["plain"]}`}>
        {rows.map(({ bucket, volume, left }) => (
          <li key={bucket.id}>
            <Link href={paths.bucket(bucket.id)}>{bucket.name}</Link>
            <span>
              {volume === null ? "Volume not known." : `${format.show("litre", volume.volumeL)}. `}
              {left !== null && leftText(left, format)}
            </span>
          </li>
        ))}
      </ul>
      {taken.unknown > 0 && (
        <p className={sheet["soft"]}>
          {taken.unknown} {taken.unknown === 1 ? "coat is" : "coats are"} not counted: no surface area set.
        </p>
      )}
      <details>
        <summary>How dips are calculated</summary>
        <p>
          Area of the piece, grown by the coats beneath, times what the kind of coat keeps of slurry:{" "}
          {weighed.length === 0
            ? "starting values, on the lean side by about a fifth (common practice, no source)"
            : `own weighings for ${weighed.join(", ")}, starting values for the rest`}
          . Weigh a piece before the dip, drained and stuccoed, to use your own figures.
        </p>
      </details>
    </Card>
  );
}
