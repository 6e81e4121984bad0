import type { Standing } from "../../logbook/standing.ts";
import { streamOf } from "../../logbook/entry.ts";
import { useFleeting } from "../app/fleeting.ts";
import { useShop } from "../app/shop.tsx";
import { Button } from "../parts/Button.tsx";
import styles from "./RackCard.module.css";

const verdicts = [
  { verdict: "wet", name: "Still wet" },
  { verdict: "dry", name: "Dry" },
] as const;

/** How the outer coat feels, in one tap from the rack: "still wet" tells as much as "dry". */
export function RackDryness({ standing: { piece, outer } }: { readonly standing: Standing }) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  if (outer === null || piece.phase !== "coating") return null;
  const { name: pieceName } = piece.plan;
  const tell = async (verdict: "wet" | "dry", name: string): Promise<void> => {
    const body = { method: "touch", verdict, coatId: outer.coat.id } as const;
    const result = await log({ do: "log", stream: streamOf("piece", piece.id), type: "dryness-seen", body });
    if (result.ok) say(`${pieceName}: felt ${name.toLowerCase()}. Logged.`);
  };
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
