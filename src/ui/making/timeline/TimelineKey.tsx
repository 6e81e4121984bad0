import sheet from "../../base/styles/sheet.module.css";
import css from "./Timeline.module.css";

/** What the shapes of the timeline mean. */
export function TimelineKey() {
  return (
    <ul className={`${sheet["row14"]} ${sheet["soft"]} ${sheet["list"]} ${css["key"]}`} aria-label="Key">
      <li>
        <svg width="40" height="22" aria-hidden="true">
          <path className={css["window"]} d="M38 5H8V17H38Z" />
          <path className={css["likely"]} d="M2 11L8 5L14 11L8 17Z" />
        </svg>
        check from, dry at the latest
      </li>
      <li>
        <svg width="20" height="22" aria-hidden="true">
          <circle className={css["ready"]} cx="10" cy="11" r="8" />
          <path className={css["sign"]} d="M6 11l3 3 5 -6" />
        </svg>{" "}
        dry
      </li>
      <li>
        <svg width="14" height="12" aria-hidden="true">
          <path className={css["dip"]} d="M1 1H13L7 10Z" />
        </svg>
        proposed dip
      </li>
      <li>
        <svg width="24" height="14" aria-hidden="true">
          <path className={css["hoursLine"]} d="M0 7H24" />
        </svg>
        you are at the bucket
      </li>
      <li>
        <svg width="24" height="14" aria-hidden="true">
          <rect className={css["damp"]} width="24" height="14" />
          <rect fill="url(#timeline-damp)" x="12" width="12" height="14" />
        </svg>
        damp, too damp
      </li>
    </ul>
  );
}
