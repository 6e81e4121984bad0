import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { dot } from "../../../geometry/vector.ts";
import { preheatOf } from "../../../trade/preheat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { resultsFor } from "./patternStudy.ts";
import { pictured } from "./useSceneView.ts";
import type { PatternController } from "./usePatternController.ts";

const shown = 6;

/** Thin places, where metal may not run, and thick ones, which freeze last. */
export function ThinThickCard({
  door: { study, mmPerUnit },
  shop,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
}) {
  const format = useFormat();
  const thickness = study.shape?.thickness ?? null;
  if (mmPerUnit === null || thickness === null) return null;
  const low = resultsFor(study)?.lowMm ?? 0;
  const high = (point: readonly [number, number, number]): string =>
    `${format.show("mm", dot(point, study.up) - low)} high`;
  const { thin, thick, median, resolvable } = thickness;
  return (
    <Card title="Thin and thick">
      <div className={`${sheet["scroll"]} ${css["wide"]}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Place</th>
              <th scope="col">Thick</th>
              <th scope="col">Where</th>
            </tr>
          </thead>
          <tbody>
            {thin.slice(0, shown).map(({ point, thickness: mm, isBelowResolution }, n) => (
              <tr key={`thin ${point.join(" ")}`}>
                <td>Thin{n < pictured ? ` T${n + 1}` : ""}</td>
                <td>
                  {format.show("mm", mm)}
                  {isBelowResolution ? ", by rays only" : ""}
                </td>
                <td>{high(point)}</td>
              </tr>
            ))}
            {thick.slice(0, shown).map(({ point, diameter }, n) => (
              <tr key={`thick ${point.join(" ")}`}>
                <td>Thick{n < pictured ? ` B${n + 1}` : ""}</td>
                <td>{format.show("mm", diameter)}, a ball</td>
                <td>{high(point)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        Half of the surface is thinner than {format.show("mm", median)}. Below {format.show("mm", resolvable)}{" "}
        this is a rough estimate only.
      </p>
      {thin[0] !== undefined && (
        <RunLine alloyId={study.alloyId} shop={shop} thinnestMm={thin[0].thickness} />
      )}
    </Card>
  );
}

/** Will metal run the thinnest place full: the usual shell heat for it, as far as practice is known. */
function RunLine({
  alloyId,
  shop,
  thinnestMm,
}: {
  readonly alloyId: string | null;
  readonly shop: Shop;
  readonly thinnestMm: number;
}) {
  const format = useFormat();
  const alloy = alloyId === null ? null : ownAlloy(alloyId, shop);
  if (alloy === null)
    return <p>Choose the alloy to see the usual shell temperature for its thinnest place.</p>;
  const usual = thinnestMm > 0 && thinnestMm <= 500 ? preheatOf({ alloy, wallMm: thinnestMm }) : null;
  if (usual === null)
    return <p>No usual shell heat is known for {alloy.name}. Pour a test of the thinnest place.</p>;
  return (
    <p>
      For {format.show("mm", thinnestMm)} of {alloy.name} the shell is usually poured at{" "}
      {format.show("temp", usual.value.lowC)} to {format.show("temp", usual.value.highC)}. Colder, the
      thinnest place may not fill. Check it on the piece’s gating page.
    </p>
  );
}
