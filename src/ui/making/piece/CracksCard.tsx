import { sentence } from "../../base/format/sentence.ts";
import { openCracks, wetPatches } from "../../../logbook/piece/crackStates.ts";
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
  const lines = (
    <ul className={sheet["bullets"]}>
      {cracks.map((one) => (
        <li key={one.crack.id}>{crackLine(one)}</li>
      ))}
    </ul>
  );
  // Once nothing waits for them one line is enough.
  if (openCracks(cracks).length === 0 && wetPatches(cracks).length === 0)
    return (
      <details>
        <summary>{sentence(words)}</summary>
        {lines}
      </details>
    );
  return (
    <Card title={sentence(words)}>
      {lines}
      <PatchKeys standing={standing} />
    </Card>
  );
}
