import { streamOf } from "../../../logbook/entries/entry.ts";
import { wetPatches } from "../../../logbook/piece/crackStates.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { Button } from "../../base/parts/Button.tsx";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useUndoing } from "../../base/state/useUndoing.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./PatchKeys.module.css";

/** A key for each patch that is not dry yet: found dry, in one tap with a way back. Nothing where there is none. */
export function PatchKeys({ standing: { piece, cracks } }: { readonly standing: Standing }) {
  const { log } = useShop();
  const undoing = useUndoing();
  const say = useFleeting((fleeting) => fleeting.say);
  const wet = wetPatches(cracks);
  if (wet.length === 0) return null;
  const dry = async (crackId: string, name: string): Promise<void> => {
    const stream = streamOf("piece", piece.id);
    const result = await log({ do: "log", stream, type: "patch-dried", body: { crackId } });
    if (result.ok) say(`${name}: logged.`, "done", undoing(result));
  };
  return (
    <div className={`${sheet["stack2"]} ${styles["keys"]}`}>
      <p className={sheet["soft"]}>
        “Dry” for the outer coat does not cover a repair. Check the repair itself.
      </p>
      {wet.map(({ crack }) => {
        const name = wet.length === 1 ? "Repair is dry" : `Repair is dry: ${crack.where}`;
        return (
          <div key={crack.id}>
            <Button onPress={() => dry(crack.id, name)}>{name}</Button>
          </div>
        );
      })}
    </div>
  );
}
