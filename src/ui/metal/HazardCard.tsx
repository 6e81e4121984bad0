import type { Alloy } from "../../trade/alloys.ts";
import { limitsOfAlloy } from "../../trade/metalHazards.ts";
import { useFormat } from "../app/useFormat.ts";
import { standingCaution } from "../log/cautions.ts";
import { Card } from "../parts/Card.tsx";
import { LevelMark } from "../parts/LevelMark.tsx";
import { contentFlags, hazardSays } from "./hazardWords.ts";
import css from "./metal.module.css";

/** What this metal does to who melts it, and the limits on what is breathed over it. */
export function HazardCard({ alloy }: { readonly alloy: Alloy }) {
  const format = useFormat();
  const limits = limitsOfAlloy(alloy.id);
  return (
    <Card title="Hazards" tone="watch">
      {contentFlags(alloy.id, format).map(({ level, says }) => (
        <p key={says} className={css["pick"]}>
          <LevelMark level={level} />
          <span>{says}</span>
        </p>
      ))}
      <ul>
        {alloy.hazards.map((hazard) => (
          <li key={hazard}>{hazardSays(hazard, format)}</li>
        ))}
      </ul>
      {limits.length > 0 && (
        <details>
          <summary>Limits on what is breathed</summary>
          <table>
            <thead>
              <tr>
                <th scope="col">In the air</th>
                <th scope="col">Limit</th>
                <th scope="col">Source</th>
              </tr>
            </thead>
            <tbody>
              {limits.map(({ label, unit, limit, kind }) => (
                <tr key={label}>
                  <td>{label}</td>
                  <td>
                    {format.number(limit.value, 4)} {unit},{" "}
                    {kind === "ceiling" ? "never more" : "over eight hours"}
                  </td>
                  <td>
                    {limit.source}
                    {limit.note !== undefined && `. ${limit.note}`}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className={css["soft"]}>
            Below a limit is not the same as safe, and a nose measures none of them.
          </p>
        </details>
      )}
      <p className={css["soft"]}>{standingCaution}</p>
    </Card>
  );
}
