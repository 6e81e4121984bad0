import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { PourPlan } from "../../../physics/metal/pourDay.ts";
import { trackOrder } from "../../../logbook/pour/pourSteps.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, clockTime, dayTime, duration, soonTime } from "../../base/format/time.ts";
import type { GoStanding } from "../../../rules/pourGo.ts";
import type { ReactNode } from "react";
import { Button } from "../../base/parts/Button.tsx";
import { GoLine } from "./GoLine.tsx";
import { correctedPlan } from "../../../logbook/pour/correctedPlan.ts";
import { clashWords, holdWords, lateWords } from "./pourStepWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** The moment everything meets at, how it has moved, and what to hold until then; with the key that leads where it leads the screen. */
export function PourMoment({
  pour,
  plan,
  go,
  now,
  awakeWords,
  lead = null,
}: {
  readonly pour: Pour;
  readonly plan: PourPlan;
  readonly go: GoStanding;
  readonly now: number;
  readonly awakeWords: string;
  /** Stop rule and next key: with them it leads the screen, and a lapsed go is said here in the largest type. */
  readonly lead?: ReactNode;
}) {
  const { log } = useShop();
  const format = useFormat();
  const { locale } = format;
  const late = trackOrder.find((track) => track === plan.lateTrack);
  const isFirst = lead !== null;
  const isLapsed = go.state === "lapsed" && isFirst;
  const isMoved = plan.movedMin >= 1;
  const movedWords = duration(plan.movedMin * minuteMs);
  const keep = () =>
    log(correctedPlan(pour, { pourAt: Math.ceil(plan.pourAt / minuteMs) * minuteMs }, `moved ${movedWords}`));
  return (
    <section className={`${sheet["stack1"]} ${styles["moment"]}`} aria-label="Pour time">
      {!isFirst && <h2>Pour time</h2>}
      {isLapsed && <GoLine go={go} now={now} isLarge />}
      {isFirst && (
        <p className={styles["when"]}>
          <span className={isLapsed ? sheet["strong"] : sheet["huge"]}>
            {dayTime(plan.pourAt, now, locale)}
          </span>{" "}
          <strong>{ago(plan.pourAt, now)}</strong>
        </p>
      )}
      {isMoved && (
        <p className={styles["warn"]} role="status">
          {movedWords} later than the plan’s {soonTime(pour.plan.pourAt, now, locale)}
          {late === undefined ? "." : `: ${lateWords[late]}.`} The other tracks are replanned.
        </p>
      )}
      {lead}
      {plan.advice.length > 0 && (
        <ul className={`${sheet["stack1"]} ${styles["orders"]}`} aria-label="What to hold">
          {plan.advice.map((advice) => (
            <li key={`${advice.track} ${advice.step}`}>{holdWords(advice, { locale, now })}</li>
          ))}
        </ul>
      )}
      {isMoved && (
        <div className={styles["keys"]}>
          <Button onPress={keep}>Plan for {clockTime(plan.pourAt, locale)} from now on</Button>
        </div>
      )}
      {plan.clashes
        .filter(({ untilAt }) => untilAt > now)
        .map((clash) => (
          <p key={`${clash.what} ${clash.fromAt}`} className={styles["warn"]}>
            {clashWords(clash, format)}
          </p>
        ))}
      {!isLapsed && <GoLine go={go} now={now} isLarge={false} />}
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>{awakeWords}</p>
    </section>
  );
}
