import { Link } from "wouter";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { planWords } from "../../base/format/planWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import type { StartPattern } from "./useStartPattern.ts";

/** What a new piece brings along from its mesh. */
export function FromPattern({
  pattern: { name, plan },
  onLeave,
}: {
  readonly pattern: StartPattern;
  readonly onLeave: () => void;
}) {
  const format = useFormat();
  const shop = useFigures() ?? builtInShop;
  const { recipeId: _, patternId, ...told } = plan;
  return (
    <Card title="From its pattern">
      <p>
        {patternId === undefined ? name : <Link href={paths.pattern(patternId)}>{name}</Link>}:{" "}
        {planWords(told, { format, recipe: (id) => id, alloy: (id) => alloyName(id, shop) }).join(", ") ||
          "nothing known yet"}
        .
      </p>
      <p className={sheet["soft"]}>All of it can be changed in the plan.</p>
      <Button kind="quiet" onPress={onLeave}>
        Start without it
      </Button>
    </Card>
  );
}
