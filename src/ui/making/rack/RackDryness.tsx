import { dryingAsked } from "../../../logbook/drying/dryingAsked.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { useTouchLog } from "../log/useTouchLog.ts";
import { Button } from "../../base/parts/Button.tsx";
import styles from "./RackCard.module.css";

const verdicts = [
  { verdict: "wet", name: "Still wet" },
  { verdict: "dry", name: "Dry" },
] as const;

/** How the outer coat feels, in one tap from the rack, with a way back: the two keys lie near each other. */
export function RackDryness({ standing }: { readonly standing: Standing }) {
  const touch = useTouchLog();
  const { piece, outer } = standing;
  if (outer === null || !dryingAsked(standing).touch) return null;
  const { name: pieceName } = piece.plan;
  const tell = (verdict: "wet" | "dry", name: string): Promise<void> =>
    touch({
      pieceId: piece.id,
      coatId: outer.coat.id,
      verdict,
      text: `${pieceName}: felt ${name.toLowerCase()}. Logged.`,
    });
  return (
    <div
      className={styles["feel"]}
      role="group"
      aria-label={`Coat ${outer.coat.number} of ${pieceName} feels`}
    >
      {verdicts.map(({ verdict, name }) => (
        <Button
          key={verdict}
          kind="quiet"
          label={`${name}: coat ${outer.coat.number} of ${pieceName}`}
          onPress={() => tell(verdict, name)}
        >
          {name}
        </Button>
      ))}
    </div>
  );
}
