import type { ComponentType } from "react";
import { useParams, useSearch } from "wouter";
import { howToNames, type HowToId } from "../../base/format/howToNames.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";
import { BackupDrawing } from "./drawings/BackupDrawing.tsx";
import { BarsDrawing } from "./drawings/BarsDrawing.tsx";
import { CaliperDrawing } from "./drawings/CaliperDrawing.tsx";
import { CupDrawing } from "./drawings/CupDrawing.tsx";
import { HygrometerDrawing } from "./drawings/HygrometerDrawing.tsx";
import { PhoneDrawing } from "./drawings/PhoneDrawing.tsx";
import { WeighDrawing } from "./drawings/WeighDrawing.tsx";
import css from "./howTo.module.css";
import { howToOf } from "./howTos.ts";

const drawings: Readonly<Record<HowToId, ComponentType>> = {
  weigh: WeighDrawing,
  cup: CupDrawing,
  hygrometer: HygrometerDrawing,
  bars: BarsDrawing,
  caliper: CaliperDrawing,
  phone: PhoneDrawing,
  backup: BackupDrawing,
};

const isHowTo = (id: string): id is HowToId => Object.hasOwn(howToNames, id);

/** A piece of work by hand: a picture, the steps, what goes wrong. */
export function HowToPage() {
  const { id } = useParams<{ id: string }>();
  const from = formIn(useSearch());
  const format = useFormat();
  if (!isHowTo(id))
    return (
      <Page title="How to" back={paths.howTos}>
        <Empty title="No such page">
          <p>The others are in the list.</p>
        </Empty>
      </Page>
    );
  const Drawn = drawings[id];
  const { why, steps, sum, goesWrong, sources } = howToOf(id, format);
  return (
    <Page title={howToNames[id]} back={from ?? paths.howTos}>
      <div className={css["page"]}>
        <figure className={`${sheet["panel"]} ${css["drawing"]}`}>
          <Drawn />
        </figure>
        <div className={sheet["stack"]}>
          <ol className={css["steps"]}>
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          {sum !== undefined && <p className={`${sheet["sunk"]} ${css["sum"]}`}>{sum}</p>}
          <p className={sheet["strong"]}>{why}</p>
        </div>
        <Card title="What can go wrong">
          <ul className={`${sheet["bullets"]} ${sheet["stack2"]}`}>
            {goesWrong.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </Card>
      </div>
      {from !== null && <LinkButton href={from}>Back to the form</LinkButton>}
      <footer className={sheet["soft"]}>
        <h2 className={css["sources"]}>Sources</h2>
        <ul className={sheet["bullets"]}>
          {sources.map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      </footer>
    </Page>
  );
}

/** The form that asked, as a path of this app; null where there was none. */
function formIn(search: string): string | null {
  const from = new URLSearchParams(search).get("from");
  return from !== null && /^\/(?!\/)/.test(from) ? from : null;
}
