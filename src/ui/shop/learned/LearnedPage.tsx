import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Learned } from "../../../storage/learning.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FactorCard } from "./FactorCard.tsx";
import { GainsCard } from "./GainsCard.tsx";
import { PairList } from "./PairList.tsx";
import { PairsPlot } from "./PairsPlot.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LearnedPage.module.css";
import { useLearned } from "./useLearned.ts";

/** What the shop has learned of its own drying, water and build, and from what. */
export function LearnedPage() {
  const { learned, failed, anew } = useLearned();
  const figures = useFigures();
  return (
    <Page title="What the shop has learned" back={paths.figures}>
      {failed && <p role="alert">It can't be calculated now. Open this page again in a moment.</p>}
      {learned !== null && figures !== undefined && (
        <div className={`${sheet["stack"]} ${styles["stack"]}`}>
          <FactorCard learning={learned.learning} figures={figures} />
          <PairsCard learned={learned} figures={figures} anew={anew} />
          <GainsCard learned={learned} figures={figures} />
        </div>
      )}
    </Page>
  );
}

function PairsCard(props: {
  readonly learned: Learned;
  readonly figures: Shop;
  readonly anew: () => Promise<void>;
}) {
  const { learned, figures, anew } = props;
  const { pairs, learning } = learned;
  if (pairs.length === 0)
    return (
      <Empty title="Nothing learned yet">
        <p>
          Weigh a coat twice while it dries, or check it with a bag, a thermometer or a meter, in a room with
          readings. Once it is covered, the app learns how long coats take here. Touch alone does not count.
        </p>
      </Empty>
    );
  return (
    <Card title="Coats used">
      <PairsPlot pairs={pairs} figures={figures} learning={learning} />
      <PairList learned={learned} figures={figures} />
      <details>
        <summary>After old readings were corrected</summary>
        <p>Coats older than two weeks are kept as calculated. If you deleted or added readings from then:</p>
        <Button onPress={anew}>Calculate all of them again</Button>
      </details>
    </Card>
  );
}
