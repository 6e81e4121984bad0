import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { cameCounts } from "../../base/format/pourCameWords.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { StopRuleLine } from "./StopRuleLine.tsx";
import { knockoutRule } from "./stopWords.ts";
import styles from "./pour.module.css";

/** Closes a pour's log: once its shells are full, with some left unpoured, or as a plan that came to nothing. */
export function EndPour({
  pour,
  hasBegun,
  courses,
  knockouts,
  now,
}: {
  readonly pour: Pour;
  readonly hasBegun: boolean;
  readonly courses: readonly ShellCourse[];
  /** When each may be broken out; null for one that waits. */
  readonly knockouts: readonly (KnockoutTimes | null)[];
  readonly now: number;
}) {
  const { log } = useShop();
  const format = useFormat();
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
  const came = courses.map((course) => course.came);
  const ended = came.filter((one) => one !== null);
  const lastAt = Math.max(...courses.flatMap(({ poured }) => poured?.at ?? []));
  const outAts = courses.flatMap(({ knockedOut }, i) => (knockedOut ? [] : (knockouts[i]?.outAt ?? [])));
  const isOver = ended.length === came.length;
  const isAllFull = isOver && ended.every((one) => one === "full");
  return (
    <Card
      title={
        isAllFull ? "All shells are full" : isOver ? `Poured: ${cameCounts(ended)}` : "End without the rest"
      }
    >
      {isOver && (
        <>
          <p className={styles["clock"]}>
            Poured {soonTime(lastAt, now, format.locale)}, {ago(lastAt, now)}
          </p>
          {outAts.length > 0 && (
            <StopRuleLine rule={knockoutRule(outAts, { now, locale: format.locale })} isSmall />
          )}
        </>
      )}
      <p>Ending the pour closes its log. Each shell’s own log goes on.</p>
      <div className={styles["keys"]}>
        <Button kind={isOver ? "primary" : "secondary"} onPress={end}>
          End the pour
        </Button>
      </div>
    </Card>
  );
}
