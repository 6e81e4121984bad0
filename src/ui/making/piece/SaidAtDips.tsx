import type { Standing } from "../../../logbook/piece/standing.ts";
import { saidThenWords } from "../../base/format/saidThenWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What was said of each coat at the dip that covered it, with the way to its page. Nothing where no entry keeps it. */
export function SaidAtDips({ standing: { piece, drying, now } }: { readonly standing: Standing }) {
  const format = useFormat();
  const kept = drying.flatMap(({ coat, said }) => (said === undefined ? [] : [{ coat, said }]));
  if (kept.length === 0) return null;
  return (
    <Card title="Dryness at each dip">
      <details>
        <summary>{kept.length === 1 ? "1 coat" : `${kept.length} coats`}</summary>
        <ul className={`${sheet["list"]} ${sheet["stack2"]}`}>
          {kept.map(({ coat, said }) => (
            <li key={coat.id}>
              <LinkButton href={paths.coat(piece.id, coat.id)}>Coat {coat.number}</LinkButton>
              <p>{saidThenWords(said, now, format)}</p>
            </li>
          ))}
        </ul>
      </details>
    </Card>
  );
}
