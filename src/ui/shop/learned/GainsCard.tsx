import { learnedKinds, learnGains } from "../../../logbook/drying/learnedGains.ts";
import { shopStream, type EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Learned } from "../../../storage/learning.ts";
import { coatWaterOf } from "../../../trade/coatWater.ts";
import { startingMm } from "../../../logbook/drying/coatMm.ts";
import { pickups } from "../../../trade/pickup.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { kindWords } from "../../base/format/coatWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import styles from "./LearnedPage.module.css";

type FigureName = "slurryKgM2" | "stuccoKgM2" | "buildMm";

type Row = {
  readonly name: FigureName;
  readonly kind: CoatKind;
  readonly start: number;
  readonly learned: { readonly value: number; readonly sd: number | null; readonly from: number } | null;
  /** Water that goes on with it, kg/m², at the start and as learned. */
  readonly water?: { readonly start: number; readonly learned: number | null } | undefined;
  readonly own: number | null;
};

const heads: Readonly<Record<FigureName, string>> = {
  slurryKgM2: "Slurry per coat, kg/m²",
  stuccoKgM2: "Stucco per coat, kg/m²",
  buildMm: "Thickness per coat",
};

/** What each kind of coat gains and builds: starting value, learned value, and the shop's own where one is in use. */
export function GainsCard({ learned, figures }: { readonly learned: Learned; readonly figures: Shop }) {
  const rows = rowsOf(learned, figures);
  return (
    <Card title="Coat water and thickness">
      <p>
        Weigh a piece before a dip, drained and stuccoed, to learn what your coats take up. Caliper a broken
        edge to learn their thickness. Nothing changes until you use it.
      </p>
      {(["slurryKgM2", "stuccoKgM2", "buildMm"] as const).map((name) => (
        <FigureTable key={name} name={name} rows={rows.filter((row) => row.name === name)} />
      ))}
      <details>
        <summary>How this is learned</summary>
        <p>
          Slurry and stucco: the median of a kind's last ten weighed coats over the piece's area, ± the spread
          of one coat. Water of a coat: its slurry times the slurry's water. Build: least squares of all
          caliper readings with the table as its start, so a kind without its own readings hardly changes.
          Starting values: common practice and derived, no source.
        </p>
      </details>
    </Card>
  );
}

function FigureTable({ name, rows }: { readonly name: FigureName; readonly rows: readonly Row[] }) {
  const { log } = useShop();
  const format = useFormat();
  const show = (value: number): string =>
    name === "buildMm"
      ? `${format.number(format.toShown("mm", value), format.digits("mm") + 1)}\u00a0${format.unit("mm")}`
      : format.number(value, 2);
  const use = (kind: CoatKind, value: number | null) => {
    const body: EntryBodies["shop-figures-set"] = { [name]: { [kind]: value } };
    return log({ do: "log", stream: shopStream, type: "shop-figures-set", body });
  };
  return (
    <table className={styles["gains"]}>
      <caption>{heads[name]}</caption>
      <thead>
        <tr>
          <th scope="col">Coat</th>
          <th scope="col">Starting value</th>
          <th scope="col">Learned</th>
          <th scope="col">In use</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ kind, start, learned, own, water }) => (
          <tr key={kind}>
            <th scope="row">{kindWords[kind]}</th>
            <td>
              {show(start)} <Water kgM2={water?.start ?? null} />
            </td>
            <td>
              {learned === null ? (
                "–"
              ) : (
                <>
                  {show(learned.value)}
                  {learned.sd !== null && ` ± ${show(learned.sd)}`} <small>from {learned.from}</small>{" "}
                  <Water kgM2={water?.learned ?? null} />
                </>
              )}
            </td>
            <td>
              {own === null ? "starting value" : `own, ${show(own)}`}
              {learned !== null && (own === null || Math.abs(own - rounded(learned.value)) > 1e-9) && (
                <Button
                  label={`Use ${show(learned.value)} for ${kindWords[kind]}: ${heads[name]}`}
                  onPress={() => use(kind, rounded(learned.value))}
                >
                  Use it
                </Button>
              )}
              {own !== null && (
                <Button
                  kind="quiet"
                  label={`Back to the starting value for ${kindWords[kind]}: ${heads[name]}`}
                  onPress={() => use(kind, null)}
                >
                  Back
                </Button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The water in that slurry, beneath it. */
function Water({ kgM2 }: { readonly kgM2: number | null }) {
  const format = useFormat();
  return kgM2 === null ? null : <small>water {format.show("gM2", kgM2 * 1000)}</small>;
}

/** A thousandth of a kg/m² or a mm is more than anyone weighs. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function rowsOf({ weighings, reads }: Learned, figures: Shop): readonly Row[] {
  const { coats, mm, startMm } = learnGains(weighings, reads);
  return learnedKinds.flatMap((kind): readonly Row[] => {
    const gains = coats.get(kind);
    const build = mm[kind];
    const gain = (one: { readonly kgM2: number; readonly sdKgM2: number | null } | undefined) =>
      one && gains ? { value: one.kgM2, sd: one.sdKgM2, from: gains.weighings } : null;
    const ofSlurry: Row = {
      name: "slurryKgM2",
      kind,
      start: pickups[kind].slurryKgM2,
      learned: gain(gains?.slurry),
      own: figures.slurryKgM2[kind] ?? null,
      water: { start: coatWaterOf(kind, 1).waterKgM2, learned: gains?.water.kgM2 ?? null },
    };
    const ofStucco: Row = {
      name: "stuccoKgM2",
      kind,
      start: pickups[kind].stuccoKgM2,
      learned: gain(gains?.stucco),
      own: figures.stuccoKgM2[kind] ?? null,
    };
    const ofBuild: Row = {
      name: "buildMm",
      kind,
      start: startMm[kind]?.mm ?? startingMm(kind),
      learned: build && build.readings > 0 ? { value: build.mm, sd: build.sdMm, from: build.readings } : null,
      own: figures.buildMm[kind] ?? null,
    };
    return kind === "seal" ? [ofSlurry, ofBuild] : [ofSlurry, ofStucco, ofBuild];
  });
}
