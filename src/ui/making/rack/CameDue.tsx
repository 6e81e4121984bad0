import { Link } from "wouter";
import { useSettings, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useNow } from "../../base/state/useNow.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dueTimeWords } from "../due/dueWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./CameDue.module.css";
import { cameDue } from "./rackFilter.ts";

/** What came to ready since the due times were last looked at; gone once it has been seen. */
export function CameDue({ items }: { readonly items: readonly RackItem[] }) {
  const [{ lastSeenDueAt }, change] = useSettings();
  const { locale } = useFormat();
  const now = useNow();
  const came = cameDue(items, { since: lastSeenDueAt, now });
  if (came.length === 0) return null;
  return (
    <Card title="Due since you last looked" tone="ember">
      <ul className={`${sheet["list"]} ${sheet["cell"]} ${styles["list"]}`}>
        {came.map(({ item, due }) => (
          <li key={item.standing.piece.id}>
            <Link href={paths.piece(item.standing.piece.id)}>{item.standing.piece.plan.name}</Link>
            <span>{dueTimeWords(due, now, locale)}</span>
          </li>
        ))}
      </ul>
      <div>
        <Button onPress={() => change({ lastSeenDueAt: now })}>Seen</Button>
      </div>
    </Card>
  );
}
