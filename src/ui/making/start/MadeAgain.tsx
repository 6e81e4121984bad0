import type { MadeBefore } from "../../../logbook/acts/startPiece.ts";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { planWords } from "../../base/format/planWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { useFigures } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What a piece that is made again takes over. */
export function MadeAgain({
  again: { name, plan },
  onLeave,
}: {
  readonly again: MadeBefore;
  readonly onLeave: () => void;
}) {
  const format = useFormat();
  const shop = useFigures() ?? builtInShop;
  const { recipeId: _, ...told } = plan;
  const said = planWords(told, { format, recipe: (id) => id, alloy: (id) => alloyName(id, shop) });
  return (
    <Card title={`The plan of ${name}`}>
      <p>{said.length === 0 ? "Nothing of it is known yet." : `${said.join(", ")}.`}</p>
      <p className={sheet["soft"]}>It comes with no coats. All of it can be changed in the plan.</p>
      <Button kind="quiet" onPress={onLeave}>
        Start without it
      </Button>
    </Card>
  );
}
