import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { cameCounts } from "../../base/format/pourCameWords.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import styles from "./pour.module.css";

/** Closes a pour's log: once its shells are full, with some left unpoured, or as a plan that came to nothing. */
export function EndPour({
  pour,
  hasBegun,
  came,
}: {
  readonly pour: Pour;
  readonly hasBegun: boolean;
  /** How each shell came to its end; null for one that waits. */
  readonly came: readonly (PourCame | null)[];
}) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const stream = streamOf("pour", pour.id);
  const end = () => log({ do: "log", stream, type: "pour-ended", body: {} });
  const putAway = async (): Promise<void> => {
    const done = await log({ do: "log", stream, type: "pour-ended", body: { dropped: true } });
    if (done.ok) say("Plan cancelled.");
  };
  if (!hasBegun)
    return (
      <Card title="Cancel this pour">
        <p>No shell has left the kiln yet. A cancelled plan gives no more alarms. You can restore it.</p>
        <div className={styles["keys"]}>
          <Button kind="quiet" onPress={putAway} debounceMs={700}>
            Cancel plan
          </Button>
        </div>
      </Card>
    );
  const ended = came.filter((one) => one !== null);
  const isOver = ended.length === came.length;
  const isAllFull = isOver && ended.every((one) => one === "full");
  return (
    <Card
      title={
        isAllFull ? "All shells are full" : isOver ? `Poured: ${cameCounts(ended)}` : "End without the rest"
      }
    >
      <p>Ending the pour closes its log. Each shell’s own log goes on.</p>
      <div className={styles["keys"]}>
        <Button kind={isOver ? "primary" : "secondary"} onPress={end}>
          End the pour
        </Button>
      </div>
    </Card>
  );
}
