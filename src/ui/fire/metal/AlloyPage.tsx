import { sentence } from "../../base/format/sentence.ts";
import { metalContentsOf } from "../../../trade/metals/contents.ts";
import { useParams } from "wouter";
import { ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { freezingGroup } from "../../../trade/metals/freezingGroup.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { alloyFigures } from "../../base/format/alloyFigures.ts";
import { basisAndSource } from "../../base/format/figureBasis.ts";
import { CompositionCard } from "./CompositionCard.tsx";
import { HazardCard } from "./HazardCard.tsx";
import { freezingWords } from "./metalWords.ts";
import { OwnAlloyCard } from "./OwnAlloyCard.tsx";
import { Rows } from "../../base/parts/Reckoned.tsx";
import { ShrinkCard } from "./ShrinkCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** One metal: its figures with their sources, its hazards and limits, and the shop's own copy of it. */
export function AlloyPage() {
  const { id } = useParams<{ id: string }>();
  const shop = useFigures();
  if (shop === undefined) return <Page title="Alloy">{null}</Page>;
  const alloy = ownAlloy(id, shop);
  if (alloy === null)
    return (
      <Page title="Alloy" back={paths.alloys}>
        <Empty title="No such alloy">
          <p>It may be another shop’s own alloy.</p>
        </Empty>
      </Page>
    );
  return <OneAlloy key={id} id={id} alloy={alloy} figures={ownMeltFigures(id, shop)} shop={shop} />;
}

type Props = {
  readonly id: string;
  readonly alloy: Alloy;
  readonly figures: MeltFigures | null;
  readonly shop: Shop;
};

function OneAlloy({ id, alloy, figures, shop }: Props) {
  const format = useFormat();
  const own = shop.alloys.find((copy) => copy.id === id) ?? null;
  const temp = (c: number): string => format.show("temp", c);
  const group = freezingGroup({ solidusC: alloy.solidusC.value, liquidusC: alloy.liquidusC.value });
  return (
    <Page title={alloy.name} back={paths.alloys}>
      {own !== null && !own.retired && (
        <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
          Your own copy
          {alloyOf(id) === null
            ? ` of ${alloyOf(alloy.id)?.name ?? alloy.id}`
            : ", used instead of the table’s"}
          .{own.note !== undefined && ` ${own.note}`}
        </p>
      )}
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          <Card title="At a glance">
            <Rows
              rows={[
                ["Pour, light and thin", `${temp(alloy.pourLowC.value)} to ${temp(alloy.pourHighC.value)}`],
                ...(figures === null
                  ? []
                  : ([
                      [
                        "Pour, heavy",
                        `${temp(figures.heavyLowC.value)} to ${temp(figures.heavyHighC.value)}`,
                      ],
                    ] as const)),
                ["Melts", `${temp(alloy.solidusC.value)} to ${temp(alloy.liquidusC.value)}`],
              ]}
            />
            <p>It {freezingWords[group]}.</p>
            <p>
              Near by other standards and trades: {alloy.otherNames.value.join(", ")}. Their limits differ.{" "}
              <span className={sheet["soft"]}>({alloy.otherNames.source})</span>
            </p>
            {figures !== null && (
              <p>
                {sentence(figures.behaviour.value)}.{" "}
                <span className={sheet["soft"]}>({figures.behaviour.source})</span>
              </p>
            )}
          </Card>
          <HazardCard contents={metalContentsOf(alloy.id) ?? {}} />
          <FiguresCard alloy={alloy} figures={figures} />
        </div>
        <div className={sheet["stack"]}>
          <OwnAlloyCard
            key={JSON.stringify(own)}
            id={id}
            own={own}
            alloy={alloy}
            figures={figures}
            shop={shop}
          />
          <ShrinkCard alloyId={id} shop={shop} figures={figures} />
          <CompositionCard alloyId={alloy.id} />
        </div>
      </div>
    </Page>
  );
}

function FiguresCard({ alloy, figures }: { readonly alloy: Alloy; readonly figures: MeltFigures | null }) {
  const format = useFormat();
  return (
    <Card title="Every figure and its source">
      <dl className={`${sheet["cell"]} ${sheet["rows"]}`}>
        {alloyFigures(alloy, figures, format).map(({ name, value, decides, of: { basis, source, note } }) => (
          <div key={name} className={css["sourced"]}>
            <dt>{name}</dt>
            <dd>{value}</dd>
            <dd className={css["source"]}>
              {basisAndSource(basis, basis === "own" ? "set on this page" : source)}
              {note !== undefined && `. ${note}`} Decides: {decides}.
            </dd>
          </div>
        ))}
      </dl>
    </Card>
  );
}
