import { streamOf } from "../../logbook/entry.ts";
import { useFleeting } from "../app/fleeting.ts";
import { useShop } from "../app/shop.tsx";
import { Button } from "../parts/Button.tsx";
import styles from "./DryingCard.module.css";

const verdicts = [
  { verdict: "dry", name: "Dry" },
  { verdict: "damp", name: "Still damp" },
  { verdict: "wet", name: "Still wet" },
] as const;

/** What a hand feels, in one tap: wet outweighs any sum, dry shifts it. */
export function DrynessTaps({ pieceId, coatId }: { readonly pieceId: string; readonly coatId: string }) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const tell = async (verdict: (typeof verdicts)[number]["verdict"], name: string): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("piece", pieceId),
      type: "dryness-seen",
      body: { method: "touch", verdict, coatId },
    });
    if (result.ok) say(`Logged: felt ${name.toLowerCase()}.`);
  };
  return (
    <fieldset className={styles["taps"]}>
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
