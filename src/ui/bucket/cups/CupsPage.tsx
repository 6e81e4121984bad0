import { useState } from "react";
import type { Cup } from "../../../logbook/shop/shopThings.ts";
import { cupOf } from "../../../trade/cups.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { CupCheckCard } from "./CupCheckCard.tsx";
import { CupForm } from "./CupForm.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./CupsPage.module.css";

/** The cups on the wall: each a thing of its own, with its own seconds. */
export function CupsPage() {
  const shop = useFigures();
  const [editing, setEditing] = useState<string | null>(null);
  if (shop === undefined) return <Page title="Cups">{null}</Page>;
  const inUse = shop.cups.filter(({ retired }) => !retired);
  const away = shop.cups.filter(({ retired }) => retired);
  const row = (cup: Cup) => (
    <li key={cup.id}>
      {editing === cup.id ? (
        <Card title={cup.name}>
          <CupForm cup={cup} onSaved={() => setEditing(null)} />
        </Card>
      ) : (
        <CupRow cup={cup} onEdit={() => setEditing(cup.id)} />
      )}
    </li>
  );
  return (
    <Page title="Cups" back={paths.buckets}>
      {inUse.length === 0 && (
        <Empty title="No flow cup yet">
          <p>
            Two cups of one kind can differ by 10%. Name each and mark it with tape. Use the same cup for one
            bucket.
          </p>
        </Empty>
      )}
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>{inUse.map(row)}</ul>
      <Card title="A new cup">
        <CupForm key={shop.cups.length} cup={null} onSaved={() => setEditing(null)} />
      </Card>
      {inUse.length > 0 && <CupCheckCard cups={inUse} />}
      {away.length > 0 && (
        <details>
          <summary>No longer used ({away.length})</summary>
          <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>{away.map(row)}</ul>
        </details>
      )}
    </Page>
  );
}

function CupRow({ cup, onEdit }: { readonly cup: Cup; readonly onEdit: () => void }) {
  const format = useFormat();
  const kind = cupOf(cup.cup);
  return (
    <div className={`${sheet["line3"]} ${sheet["panel"]} ${css["row"]}`}>
      <span className={css["what"]}>
        <strong>{cup.name}</strong>
        <span className={sheet["pale"]}>
          {kind === null
            ? cup.cup
            : `${kind.label}, hole ${format.show("mm", kind.orificeMm.value)}, good for ${format.number(kind.seconds.value.low, 0)} to ${format.show("s", kind.seconds.value.high)}`}
        </span>
      </span>
      <Button kind="quiet" onPress={onEdit} label={`Change ${cup.name}`}>
        Change
      </Button>
    </div>
  );
}
