import type { Packing } from "../../../logbook/planning/packPour.ts";
import { kilnFillShare } from "../../../trade/kilnFill.ts";
import { useSettings } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { paths } from "../../base/state/paths.ts";
import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import { bucketHoursWords } from "../timeline/timelineWords.ts";

/** What the proposal rests on, in sentences. */
export function HowCard({ how, exactUpTo }: { readonly how: Packing["how"]; readonly exactUpTo: number }) {
  const format = useFormat();
  const [{ bucketHours }] = useSettings();
  return (
    <details>
      <summary>How this is worked out</summary>
      <div className={`${sheet["stack2"]} ${sheet["lead"]}`}>
        <p>
          {how === "exact"
            ? "Every choice was tried. No other takes more pieces; of equals it takes the piece that was started first."
            : `More than ${exactUpTo} pieces could go: they are taken one after the other, in several orders, and the best of these is shown. Another choice may take more.`}
        </p>
        <p>
          {bucketHours.length === 0
            ? "No hours at the bucket are set, so nights are not known: a coat may be due at any hour."
            : `Coats go on within your hours at the bucket, ${bucketHoursWords(bucketHours, format.locale)}.`}{" "}
          <Link href={paths.timeline} className={sheet["link"]}>
            Change the hours
          </Link>
        </p>
        <p>
          Drying is forecast from each room’s last readings. Each coat is taken as dry when the next goes on,
          not prewetted, by the usual bucket. The last drying before fire has its cautious figure only.
          Burnout, firing and preheat take as long as their own plans say for all shells together. Time for
          the review, loading, and other work of the kiln is not counted.
        </p>
        <p>
          A crucible melts once that day. Shells may take {format.show("percent", kilnFillShare.value)} of the
          kiln, each counted as the box round it with its shell.
        </p>
      </div>
    </details>
  );
}
