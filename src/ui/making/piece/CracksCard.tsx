import { sentence } from "../../base/format/sentence.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { isPastPour } from "../../../rules/stage.ts";
import { crackLine, cracksWords } from "../../base/format/crackStateWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { PatchKeys } from "./PatchKeys.tsx";

/** Each crack with its state, and the key that a patch waits for. Nothing where the log has no crack, or metal is in. */
export function CracksCard({ standing }: { readonly standing: Standing }) {
  const { cracks, piece } = standing;
  if (cracks.length === 0 || isPastPour(piece)) return null;
  const words = cracksWords(cracks);
  return (
    <Card title={sentence(words)}>
      <ul className={sheet["bullets"]}>
        {cracks.map((one) => (
          <li key={one.crack.id}>{crackLine(one)}</li>
        ))}
      </ul>
      <PatchKeys standing={standing} />
    </Card>
  );
}
