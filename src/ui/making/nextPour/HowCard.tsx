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
      <summary>How this is calculated</summary>
      <div className={`${sheet["stack2"]} ${sheet["lead"]}`}>
        <p>
          {how === "exact"
            ? "Every choice was tried. None takes more pieces. Between equals, the piece started first goes."
            : `More than ${exactUpTo} pieces could go. They were tried in several orders and the best is shown. Another choice may take more.`}
        </p>
        <p>
          {bucketHours.length === 0
            ? "No hours at the bucket are set, so a coat may be due at any hour."
            : `Coats go on within your hours at the bucket, ${bucketHoursWords(bucketHours, format.locale)}.`}{" "}
          <Link href={paths.timeline} className={sheet["link"]}>
            Change the hours
          </Link>
        </p>
        <p>
          Drying is forecast from each room’s last readings. It assumes each coat is dry when the next goes
          on, not prewetted, from the usual bucket. The final dry uses its cautious time only. Burnout, firing
          and preheat take as long as their plans for all shells together. Review, loading and other kiln work
          are not counted.
        </p>
        <p>
          A crucible melts once that day. Shells may fill {format.show("percent", kilnFillShare.value)} of the
          kiln, each counted as the box around its shell.
        </p>
      </div>
    </details>
  );
}
