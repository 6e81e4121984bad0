import { useParams } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { firstMix } from "../../../physics/slurry/slurry.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { aimLines, lifeLines } from "../buckets/bucketWords.ts";
import { bucketUses } from "../buckets/bucketForm.ts";
import { Lines } from "../buckets/Lines.tsx";
import { useBucketStanding } from "../useBucketStanding.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { reasonWords } from "../../base/format/bucketHealthWords.ts";
import { clockTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { ReadingsTable } from "./ReadingsTable.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./bucketCard.module.css";

/** The card that hangs on the bucket: one printed page. */
export function BucketCardPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucketStanding(id);
  if (found === undefined) return <Page title="Bucket card">{null}</Page>;
  if (found === null)
    return (
      <Page title="Bucket card" back={paths.buckets}>
        <Empty title="No such bucket">
          <p>It is not in this device’s log.</p>
        </Empty>
      </Page>
    );
  return (
    <Page
      title="Bucket card"
      back={paths.bucket(id)}
      actions={<Button onPress={() => window.print()}>Print</Button>}
    >
      <Sheet standing={found.standing} />
    </Page>
  );
}

const mostReasons = 4;

function Sheet({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { bucket, health, now, isUntold } = standing;
  const aims = aimLines(standing, format);
  const life = lifeLines(standing, format);
  const use = bucketUses.find(({ value }) => value === bucket.use)?.label ?? bucket.use;
  return (
    <article className={`${sheet["stack"]} ${css["sheet"]}`}>
      <header className={`${sheet["row24"]} ${css["head"]}`}>
        <div>
          <h2 className={css["name"]}>{bucket.name}</h2>
          <p className={`${sheet["pale"]} ${sheet["breaks"]} ${css["soft"]}`}>
            {[use, bucket.slurry].filter((word) => word !== "").join(": ")}
          </p>
        </div>
        <p className={`${sheet["pale"]} ${sheet["breaks"]} ${css["soft"]}`}>
          As of {dateOf(now, format.locale)}, {clockTime(now, format.locale)}
        </p>
      </header>
      <section className={`${sheet["stack2"]} ${css["health"]}`} aria-label="Health">
        <HealthMark level={health.level} size="large" ink />
        {!isUntold && (
          <ul>
            {health.reasons.slice(0, mostReasons).map((reason) => (
              <li key={reason.code}>{reasonWords(reason, format).says}</li>
            ))}
          </ul>
        )}
      </section>
      <div className={css["two"]}>
        <section>
          <h3>Targets</h3>
          {aims.length === 0 ? <p>No targets are set.</p> : <Lines lines={aims} />}
        </section>
        <section>
          <h3>What is in it</h3>
          {life.length === 0 ? <p>No material is logged.</p> : <Lines lines={life} />}
          <MixingOrder standing={standing} />
        </section>
      </div>
      <section>
        <h3>Last ten checks</h3>
        <ReadingsTable standing={standing} />
      </section>
      <section className={css["hand"]}>
        <h3>By hand</h3>
        <table>
          <thead>
            <tr>
              {["Day, time", "°", "Viscosity 1 (s)", "Viscosity 2 (s)", "Density", "pH", "Added", "By"].map(
                (title) => (
                  <th key={title} scope="col">
                    {title}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {handRows.map((row) => (
              <tr key={row}>
                {handCells.map((cell) => (
                  <td key={cell}>&nbsp;</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </article>
  );
}

const handRows = [1, 2, 3, 4, 5, 6, 7, 8] as const;
const handCells = [1, 2, 3, 4, 5, 6, 7, 8] as const;

const dateOf = (at: number, locale: string): string =>
  dateFormat(locale, { day: "numeric", month: "short", year: "numeric" }).format(at);

/** In which order it is made, with amounts for a full bucket where the mix is known. */
function MixingOrder({ standing: { aim } }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const mix =
    aim.fullL !== null && aim.fullL > 0 && aim.ratio !== null && aim.flourGCm3 !== null
      ? firstMix({
          volumeL: aim.fullL,
          flourGCm3: aim.flourGCm3.value,
          binderGCm3: aim.solGCm3.value,
          binderSilica: aim.solSilica.value,
          ratio: aim.ratio.value,
        })
      : null;
  const known = mix?.ok === true ? mix : null;
  const kg = (value: number | undefined): string =>
    value === undefined ? "" : ` ${format.show("kg", value)}`;
  return (
    <>
      <h3>
        Mixing order
        {known !== null && aim.fullL !== null && `, for ${format.show("litre", aim.fullL)}`}
      </h3>
      <ol className={css["order"]}>
        <li>Binder{kg(known?.solKg)} into a clean bucket, stirrer on.</li>
        <li>Mask on. Flour{kg(known?.firstFlourKg)}, slowly; let it stir.</li>
        <li>
          Last flour{known === null ? "" : ` up to ${format.show("kg", known.flourKg - known.firstFlourKg)}`},
          by the cup.
        </li>
        <li>To correct: temperature, density, viscosity. Water before flour. Add half, stir, check again.</li>
        <li>Base, biocide: ask the binder’s maker.</li>
      </ol>
    </>
  );
}
