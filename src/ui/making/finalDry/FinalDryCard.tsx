import { coatsAreDone } from "../../../rules/stage.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { PatchesWait } from "./PatchesWait.tsx";
import { leastWords, fireReasonWords } from "./finalDryWords.ts";

/** The last drying in two lines, on the piece once its coats are on; while it is the next thing, its key stands in the bar. */
export function FinalDryCard({ standing }: { readonly standing: Standing }) {
  const format = useFormat();
  const { finalDry, forFire, now, piece, action } = standing;
  if (finalDry === null || forFire === null || !coatsAreDone(standing)) return null;
  return (
    <Card title={`Final dry: ${leastWords(forFire, now, format.locale)}`}>
      <p>{fireReasonWords(forFire, now, format)}</p>
      <PatchesWait standing={standing} />
      {action.kind !== "final-dry" && (
        <div>
          <LinkButton href={paths.finalDry(piece.id)}>Final dry before burnout</LinkButton>
        </div>
      )}
    </Card>
  );
}
