import { useState } from "react";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { MaterialForm } from "./MaterialForm.tsx";
import { materialKinds } from "./materialForm.ts";
import { priceText, sharedText } from "./stockWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

/** What the shop buys: flour, binder, stucco, metal, with its own prices. */
export function MaterialsPage() {
  const shop = useFigures();
  const [editing, setEditing] = useState<string | null>(null);
  if (shop === undefined) return <Page title="Materials">{null}</Page>;
  const inUse = shop.materials.filter(({ retired }) => !retired);
  const away = shop.materials.filter(({ retired }) => retired);
  const currency = shop.materials.findLast((one) => one.currency !== undefined)?.currency;
  const row = (material: Material) => (
    <li key={material.id}>
      {editing === material.id ? (
        <Card title={material.name}>
          <MaterialForm material={material} onSaved={() => setEditing(null)} />
        </Card>
      ) : (
        <MaterialRow material={material} among={inUse} onEdit={() => setEditing(material.id)} />
      )}
    </li>
  );
  return (
    <Page
      title="Materials"
      back={paths.stock}
      actions={
        <LinkButton kind="quiet" href={paths.stock}>
          Stock
        </LinkButton>
      }
    >
      {inUse.length === 0 && (
        <Empty title="No material yet">
          <p>
            Start with flour, binder and one stucco. The log then shows what is left, what a piece costs and
            when to order.
          </p>
        </Empty>
      )}
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>{inUse.map(row)}</ul>
      <Card title="A new material">
        <MaterialForm
          key={shop.materials.length}
          material={null}
          currency={currency}
          onSaved={() => setEditing(null)}
        />
      </Card>
      {away.length > 0 && (
        <details>
          <summary>No longer used ({away.length})</summary>
          <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>{away.map(row)}</ul>
        </details>
      )}
    </Page>
  );
}

function MaterialRow(props: {
  readonly material: Material;
  readonly among: readonly Material[];
  readonly onEdit: () => void;
}) {
  const { material, among, onEdit } = props;
  const format = useFormat();
  const kind = materialKinds.find(({ value }) => value === material.kind)?.label ?? material.kind;
  const price = priceText(material, format);
  const shared = sharedText(material, among);
  return (
    <div className={`${sheet["line3"]} ${sheet["panel"]} ${css["row"]}`}>
      <span className={css["what"]}>
        <strong>{material.name}</strong>
        <span className={sheet["soft"]}>
          {[
            kind,
            price,
            material.packKg === undefined ? null : `packs of ${format.show("kg", material.packKg)}`,
          ]
            .filter((word) => word !== null)
            .join(", ")}
        </span>
        {shared !== null && <span>{shared}</span>}
      </span>
      <Button kind="quiet" onPress={onEdit} label={`Change ${material.name}`}>
        Change
      </Button>
    </div>
  );
}
