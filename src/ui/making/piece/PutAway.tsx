import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";

export function PutAway({ piece }: { readonly piece: Piece }) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const archive = async (archived: boolean): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("piece", piece.id),
      type: "piece-archived",
      body: { archived },
    });
    if (result.ok) say(archived ? "Put in the archive." : "Back on the rack.");
  };
  return (
    <div className={sheet["row"]}>
      <Button onPress={() => archive(!piece.archived)}>
        {piece.archived ? "Take out of the archive" : "Put in the archive"}
      </Button>
    </div>
  );
}
