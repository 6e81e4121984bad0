import type { Contents } from "../../../physics/metal/scrap.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { standingCaution } from "../../base/cautions/cautionWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { FumeLimits } from "./FumeLimits.tsx";
import { contentNotes, hazardLines, type HazardMoment } from "../../base/cautions/hazardWords.ts";
import sheet from "../../base/styles/sheet.module.css";

const moments: readonly (readonly [HazardMoment, string])[] = [
  ["melt", "At the melt"],
  ["pour", "At the pour"],
  ["knock-out", "Knock-out"],
  ["grinding", "Grinding and finishing"],
];

/** What a metal does to those who melt, pour, break out and grind it, and the limits on what is breathed over it. */
export function HazardCard({ contents }: { readonly contents: Contents }) {
  const format = useFormat();
  return (
    <Card title="Hazards" tone="watch">
      {contentNotes(contents, format).map((line) => (
        <p key={line}>
          <strong>{line}</strong>
        </p>
      ))}
      {moments.map(([moment, title]) => {
        const lines = hazardLines(contents, moment, format);
        return lines.length === 0 ? null : (
          <section key={moment} className={sheet["stack3"]} aria-label={title}>
            <h3>{title}</h3>
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        );
      })}
      <FumeLimits contents={contents} />
      <p className={sheet["soft"]}>{standingCaution}</p>
    </Card>
  );
}
