import { coatsAreDone } from "../../rules/stage.ts";
import type { Standing } from "../../logbook/standing.ts";
import { paths } from "../app/paths.ts";
import { useFormat } from "../app/useFormat.ts";
import { Card } from "../parts/Card.tsx";
import { LinkButton } from "../parts/LinkButton.tsx";
import { leastWords, reasonWords } from "./finalDryWords.ts";

/** The last drying in two lines, on the piece once its coats are on. */
export function FinalDryCard({ standing }: { readonly standing: Standing }) {
  const format = useFormat();
  const { finalDry, forFire, now, piece } = standing;
  if (finalDry === null || forFire === null || !coatsAreDone(standing)) return null;
  return (
    <Card title={`Final dry: ${leastWords(forFire, now, format.locale)}`}>
      <p>{reasonWords(forFire, now, format)}</p>
      <div>
        <LinkButton href={paths.finalDry(piece.id)}>Final dry before burnout</LinkButton>
      </div>
    </Card>
  );
}
