import type { ReactNode } from "react";
import type { VolumeRoute } from "../../../physics/metal/patternVolume.ts";
import type { PatternMeasured } from "../../../logbook/entries/pieceBodies.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import { volumeRouteError } from "../../../trade/volumeRoutes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import type { MassDraft } from "../../../logbook/casting/massDraft.ts";
import type { MassByRoutes, RouteLine } from "../../../logbook/casting/massRoutes.ts";
import { HollowFields, SlicerFields, WaterFields, WeightFields } from "./RouteFields.tsx";
import { refusalSays, routeInSentence, routeWords } from "./metalWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

type Props = {
  readonly form: SumForm<MassDraft>;
  readonly routes: MassByRoutes;
  readonly mesh: PatternMeasured | null;
  readonly material: PatternMaterial | null;
};

/** The metal by every way of measuring, side by side, each with its error, and which one is used. */
export function RoutesCard({ form, routes, mesh, material }: Props) {
  const { lines, chosen } = routes;
  return (
    <Card title="Metal volume, by method">
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        Measure it one way or several. The most accurate one is used, and you are warned if two disagree. All
        for the pattern at its present size.
      </p>
      <RouteTable routes={routes} />
      {chosen !== null && <Disagreements routes={routes} />}
      <PickOf
        form={form}
        at="withGating"
        label="Measured"
        options={[
          { value: "no", label: "The casting alone" },
          { value: "yes", label: "With its gating" },
        ]}
      />
      <div className={sheet["stack3"]}>
        {lines.map((line) => (
          <Route key={line.route} line={line} isUsed={chosen?.used.route === line.route}>
            <RouteBody route={line.route} form={form} mesh={mesh} material={material} />
          </Route>
        ))}
      </div>
    </Card>
  );
}

function RouteBody({ route, form, mesh, material }: Omit<Props, "routes"> & { readonly route: VolumeRoute }) {
  switch (route) {
    case "mesh":
      return <HollowFields form={form} mesh={mesh} />;
    case "hydrostatic":
    case "displacement":
      return <WaterFields form={form} route={route} />;
    case "slicer":
      return <SlicerFields form={form} />;
    case "pattern-weight":
      return <WeightFields form={form} mesh={mesh} material={material} />;
  }
}

function RouteTable({ routes: { lines, chosen } }: { readonly routes: MassByRoutes }) {
  const format = useFormat();
  const done = lines.filter(({ volume }) => volume !== null);
  if (done.length === 0) return <p>Nothing measured yet. Choose a method below.</p>;
  return (
    <div className={sheet["scroll"]}>
      <table>
        <thead>
          <tr>
            <th scope="col">Method</th>
            <th scope="col">Volume</th>
            <th scope="col">Metal</th>
          </tr>
        </thead>
        <tbody>
          {done.map(({ route, volume, mass, errorShare }) => (
            <tr key={route}>
              <td>
                {routeWords[route]}
                {chosen?.used.route === route && (
                  <>
                    {" "}
                    <strong>(used)</strong>
                  </>
                )}
              </td>
              <td>{volume?.ok === true ? format.show("cm3", volume.volumeCm3) : "not used"}</td>
              <td>
                {mass === null
                  ? "–"
                  : `${format.show("kg", mass.likelyKg)} ± ${format.show("kg", mass.highKg - mass.likelyKg)}`}
                <br />
                <small className={sheet["soft"]}>± {format.number(errorShare * 100, 1)}%</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Disagreements({ routes: { chosen } }: { readonly routes: MassByRoutes }) {
  const format = useFormat();
  if (chosen === null) return null;
  return (
    <>
      <p>
        Used: {routeInSentence[chosen.used.route]},{" "}
        {chosen.why === "only-one" ? "the only one." : "the most accurate."}
      </p>
      {chosen.disagreements.map(({ other, used, differenceShare, explainedShare }) => (
        <p key={other} role="alert" className={css["warn"]}>
          {routeWords[other]} comes out {format.number(Math.abs(differenceShare) * 100, 0)}%{" "}
          {differenceShare > 0 ? "more" : "less"} than {routeInSentence[used]}. Their errors explain{" "}
          {format.number(explainedShare * 100, 0)}%: one of the two is wrong. Measure again before you weigh
          metal.
        </p>
      ))}
    </>
  );
}

function Route({
  line: { route, volume },
  isUsed,
  children,
}: {
  readonly line: RouteLine;
  readonly isUsed: boolean;
  readonly children: ReactNode;
}) {
  const format = useFormat();
  const { value, source } = volumeRouteError[route];
  const says =
    volume === null ? "not measured" : volume.ok ? format.show("cm3", volume.volumeCm3) : "not used";
  return (
    <details className={`${css["route"]} ${isUsed ? css["used"] : ""}`}>
      <summary>
        <span className={`${sheet["row03"]} ${css["routeName"]}`}>
          {routeWords[route]} <small>{isUsed ? `${says}, used` : says}</small>
        </span>
      </summary>
      <div className={sheet["stack3"]}>
        {children}
        {volume !== null && !volume.ok && (
          <p role="alert" className={css["warn"]}>
            {refusalSays[volume.code]}
          </p>
        )}
        <p className={sheet["soft"]}>
          Error: ± {format.number(value * 100, 1)}% ({source}).
        </p>
      </div>
    </details>
  );
}
