import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import type { RackFault } from "../../base/state/rackItems.ts";
import { Card } from "../../base/parts/Card.tsx";
import { RemakeKey } from "../../shop/settings/RemakeKey.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./FaultCards.module.css";

/** Pieces that can't be worked out, each a card of its own: the others go on, and nothing of the log is lost. */
export function FaultCards({ faults }: { readonly faults: readonly RackFault[] }) {
  return faults.map(({ pieceId, name, detail }) => (
    <Card key={pieceId} title={`${name ?? "One piece"} can't be shown here`}>
      <p>Its log is kept. The other pieces go on as usual.</p>
      <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>What went wrong: {detail}</p>
      <div className={styles["keys"]}>
        <Link href={paths.piece(pieceId)}>Open its log</Link>
        <RemakeKey />
      </div>
    </Card>
  ));
}
