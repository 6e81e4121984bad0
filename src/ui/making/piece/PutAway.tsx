import { madeBefore } from "../../../logbook/acts/startPiece.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { useLocation } from "wouter";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { writeDraft } from "../../../storage/drafts.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";

/** What can be done with the piece as a whole: make it again, put it away. */
export function PutAway({ piece }: { readonly piece: Piece }) {
  const { log, db } = useShop();
  const [, goTo] = useLocation();
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
  const again = async (): Promise<void> => {
    const draft = { recipeId: piece.plan.recipeId ?? null, again: madeBefore(piece) };
    await writeDraft(db, "start", { about: "", draft });
    goTo(paths.newPiece);
  };
  return (
    <div className={sheet["row"]}>
      <Button onPress={again}>Make it again</Button>
      <Button onPress={() => archive(!piece.archived)}>
        {piece.archived ? "Take out of the archive" : "Put in the archive"}
      </Button>
    </div>
  );
}
