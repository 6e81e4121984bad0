import type { Alloy } from "../../trade/alloys.ts";
import { useFormat } from "../app/useFormat.ts";
import { standingCaution } from "../log/cautions.ts";
import css from "../log/Cautions.module.css";
import { hazardSays, meltCautions } from "./hazardWords.ts";

/** What to mind while metal melts, and what this metal adds to it. */
export function MeltCautions({ alloy }: { readonly alloy: Alloy | null }) {
  const format = useFormat();
  const lines = [
    ...meltCautions(format),
    ...(alloy?.hazards.map((hazard) => hazardSays(hazard, format)) ?? []),
  ];
  return (
    <section className={css["cautions"]} aria-label="Cautions">
      <h2 className={css["title"]}>Before and while it melts</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{standingCaution}</p>
    </section>
  );
}
