import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Command } from "../../../logbook/log/command.ts";
import { useSettings } from "../../base/state/live.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import type { DipTile } from "./dipTile.ts";
import type { GuideStep } from "../../../logbook/dip/guide.ts";
import { holdTicks, guideStepWords } from "./guideWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./TimerScreen.module.css";
import { type DipTimer, timerWords, type TimerKind, type TimerLengths } from "./useDipTimer.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

const timed: Partial<Record<GuideStep["id"], TimerKind>> = { drain: "drain", wait: "stucco" };

/** One piece through its dip, a step a screen. The tap at the stucco puts the coat into the log. */
export function GuideScreen(props: {
  readonly tile: DipTile;
  readonly steps: readonly GuideStep[];
  readonly timer: DipTimer;
  readonly lengths: TimerLengths;
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onCoat: () => Promise<boolean>;
  readonly onHold: (command: Command, says: string) => Promise<boolean>;
  readonly onBack: () => void;
}) {
  const { tile, steps, timer, lengths, told, out, onCoat, onHold, onBack } = props;
  const [{ signName }] = useSettings();
  const [place, setPlace] = useState(0);
  // Once it is in the log the tile speaks of the coat after it.
  const [coatNumber] = useState(tile.coat.number);
  const [over, setOver] = useState<TimerKind | null>(null);
  const step = steps[place];
  if (step === undefined) return null;
  const { title, says } = guideStepWords(step.id, tile.coat.kind);
  const kind = timed[step.id];
  const isLast = place === steps.length - 1;
  const next = async (): Promise<void> => {
    const { hold } = step;
    if (hold !== null) {
      const command: Command = {
        do: "log",
        stream: streamOf("piece", tile.pieceId),
        type: "hold-passed",
        body: withoutEmpty({ point: hold, name: signName === "" ? undefined : signName }),
      };
      if (!(await onHold(command, `${holdTicks[hold]}: ${tile.name}`))) return;
    }
    if (step.logsCoat && !(await onCoat())) return;
    if (timer.running !== null) timer.stop();
    setOver(null);
    if (isLast) onBack();
    else setPlace(place + 1);
  };
  const isRunning = kind !== undefined && timer.running?.kind === kind;
  const nextText =
    step.hold !== null
      ? holdTicks[step.hold]
      : step.id === "stucco"
        ? "Stucco is on"
        : isLast
          ? "Back to the pieces"
          : step.logsCoat
            ? "Drained: coat done"
            : "Next";
  return (
    <BucketScreen
      title={`${tile.name}: ${title}`}
      sub={`Step ${place + 1} of ${steps.length}, coat ${coatNumber}`}
      way={{ text: place === 0 ? "Leave guide" : "Pieces", onPress: onBack }}
      out={out}
      told={told}
    >
      <p className={styles["says"]}>{says}</p>
      {step.dust && <p className={styles["dust"]}>Mask on: stucco dust is silica and stays in the lungs.</p>}
      {step.seconds !== null && !isRunning && (
        <p className={sheet["title"]}>
          Usual: {step.seconds.low} to {step.seconds.high} s
        </p>
      )}
      {isRunning && (
        <p className={styles["digits"]} role="timer">
          {timer.leftS} <small>s</small>
        </p>
      )}
      {kind !== undefined && !isRunning && (
        <BigKey
          main={over !== kind}
          onPress={() => {
            setOver(kind);
            timer.start(kind, lengths[kind]);
          }}
          under="Rings only while this screen is on"
        >
          {over === kind ? "Once more" : `${timerWords[kind].running}: ${lengths[kind]} s`}
        </BigKey>
      )}
      <BigKey main={kind === undefined || over === kind} onPress={next}>
        {nextText}
      </BigKey>
    </BucketScreen>
  );
}
