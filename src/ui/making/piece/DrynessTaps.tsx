import { type Felt, useTouchLog } from "../log/useTouchLog.ts";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./DryingCard.module.css";

const verdicts = [
  { verdict: "dry", name: "Dry" },
  { verdict: "damp", name: "Still damp" },
  { verdict: "wet", name: "Still wet" },
] as const;

/** What a hand feels, in one tap: wet outweighs any estimate, dry is of the outer face alone. */
export function DrynessTaps({ pieceId, coatId }: { readonly pieceId: string; readonly coatId: string }) {
  const touch = useTouchLog();
  const tell = (verdict: Felt, name: string): Promise<void> =>
    touch({ pieceId, coatId, verdict, text: `Logged: felt ${name.toLowerCase()}.` });
  return (
    <fieldset className={`${sheet["stack1"]} ${styles["taps"]}`}>
      <legend>It feels</legend>
      <div className={styles["keys"]}>
        {verdicts.map(({ verdict, name }) => (
          <Button key={verdict} onPress={() => tell(verdict, name)}>
            {name}
          </Button>
        ))}
      </div>
    </fieldset>
  );
}
