import { useState } from "react";
import type { FreezeOrder } from "../../../geometry/freezeOrder.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { HeatBands } from "../scene/heatBands.ts";
import { heightOf } from "./scenePlaces.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { ThinThickCard } from "./ThinThickCard.tsx";
import type { FreezeState } from "./useFreeze.ts";
import type { SceneController } from "./useSceneController.ts";

/** How thick the piece is all over, what freezes last, and whether it is fed until then. */
export function WallsPanel(props: {
  readonly desk: SceneController;
  readonly bands: HeatBands | null;
  readonly freeze: FreezeState;
  readonly shop: Shop;
}) {
  const { desk, bands, freeze, shop } = props;
  const [isFlats, setIsFlats] = useState(false);
  return (
    <>
      <Card title="Thickness">
        {bands === null ? <p role="status">Calculating…</p> : <Legend bands={bands} />}
      </Card>
      <ThinThickCard door={desk.door} shop={shop} />
      <Card title="Hot spots">
        <p className={sheet["soft"]}>A ranking by shape only, with the gates and feeders you placed.</p>
        {freeze.found === null ? (
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button onPress={freeze.run} disabledReason={freeze.isWorking ? "Calculating…" : null}>
              Find the hot spots
            </Button>
          </div>
        ) : (
          <HotSpots desk={desk} found={freeze.found} />
        )}
        {freeze.isStale && (
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button onPress={freeze.run}>Recalculate with these feeders</Button>
          </div>
        )}
        {freeze.trouble !== null && <p role="alert">It could not be calculated: {freeze.trouble}</p>}
      </Card>
      {(desk.study.shape?.flats ?? []).length > 0 && (
        <Card>
          <details open={isFlats} onToggle={(event) => setIsFlats(event.currentTarget.open)}>
            <summary>Widest flats, ringed in the picture</summary>
            <Flats desk={desk} />
          </details>
        </Card>
      )}
    </>
  );
}

function Legend({ bands: { limitsMm, shares, unknownShare } }: { readonly bands: HeatBands }) {
  const format = useFormat();
  const mm = (n: number): string => format.show("mm", limitsMm[n] ?? 0);
  const last = limitsMm.length;
  const name = (n: number): string =>
    last === 0
      ? "All"
      : n === 0
        ? `Below ${mm(0)}`
        : n === last
          ? `Above ${mm(last - 1)}`
          : `${mm(n - 1)} to ${mm(n)}`;
  return (
    <ul
      className={`${sheet["stack1"]} ${sheet["list"]} ${css["legend"]}`}
      aria-label="Share of the surface by thickness"
    >
      {shares.map((share, n) => (
        <li key={name(n)}>
          <i data-band={n} aria-hidden="true" />
          <span>{name(n)}</span>
          <span>{format.show("percent", share)}</span>
        </li>
      ))}
      {unknownShare > 0.005 && (
        <li>
          <i data-band={5} aria-hidden="true" />
          <span>Not known</span>
          <span>{format.show("percent", unknownShare)}</span>
        </li>
      )}
    </ul>
  );
}

function HotSpots({ desk, found }: { readonly desk: SceneController; readonly found: FreezeOrder }) {
  const format = useFormat();
  const { results } = desk;
  if (found.hotSpots.length === 0)
    return <p>Everything gets thicker towards a gate or feeder: nothing is cut off.</p>;
  const isFed = desk.study.marks.some(({ kind }) => kind === "gate" || kind === "feeder");
  return (
    <div className={sheet["scroll"]}>
      <table>
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col">Freezes like a plate of</th>
            <th scope="col">Is it fed?</th>
          </tr>
        </thead>
        <tbody>
          {found.hotSpots.slice(0, 12).map(({ point, plate, neck }, n) => (
            <tr key={point.join(" ")}>
              <td>
                H{n + 1}
                {results === null ? "" : `, ${format.show("mm", heightOf(point, results))} up`}
              </td>
              <td>{format.show("mm", plate)}</td>
              <td>
                {neck === null
                  ? isFed
                    ? "No: no path to a gate or feeder."
                    : "No gate or feeder is placed yet."
                  : neck.plate < plate
                    ? `Only until a neck like ${format.show("mm", neck.plate)} freezes; then it is cut off.`
                    : "Yes."}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Flats({ desk: { study, results } }: { readonly desk: SceneController }) {
  const format = useFormat();
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Wide</th>
          <th scope="col">Long</th>
          <th scope="col">Where</th>
        </tr>
      </thead>
      <tbody>
        {(study.shape?.flats ?? []).map(({ point, width, length }) => (
          <tr key={point.join(" ")}>
            <td>{format.show("mm", width)}</td>
            <td>{format.show("mm", length)}</td>
            <td>{results === null ? "" : `${format.show("mm", heightOf(point, results))} up`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
