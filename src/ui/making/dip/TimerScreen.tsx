import { useState } from "react";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import styles from "./TimerScreen.module.css";
import { type DipTimer, timerWords, type TimerLengths } from "./useDipTimer.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

const stepS = 5;

/** Two short timers. Their label says when they ring: only here, while the screen is on. */
export function TimerScreen(props: {
  readonly timer: DipTimer;
  readonly lengths: TimerLengths;
  readonly onLengths: (lengths: TimerLengths) => void;
  readonly awakeWords: string;
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onBack: () => void;
}) {
  const { timer, lengths, onLengths, awakeWords, told, out, onBack } = props;
  const [setting, setSetting] = useState(false);
  const { running, leftS } = timer;
  const longer = (kind: keyof TimerLengths, by: number): void =>
    onLengths({ ...lengths, [kind]: Math.max(stepS, lengths[kind] + by) });

  if (setting)
    return (
      <BucketScreen
        title={`Drain ${lengths.drain} s, stucco wait ${lengths.stucco} s`}
        way={{ text: "Done", onPress: () => setSetting(false) }}
        out={out}
        told={told}
      >
        <BigKey onPress={() => longer("drain", -stepS)}>Drain 5 s less</BigKey>
        <BigKey onPress={() => longer("drain", stepS)}>Drain 5 s more</BigKey>
        <BigKey onPress={() => longer("stucco", -stepS)}>Stucco wait 5 s less</BigKey>
        <BigKey onPress={() => longer("stucco", stepS)}>Stucco wait 5 s more</BigKey>
      </BucketScreen>
    );

  return (
    <BucketScreen
      title={running === null ? "Timers" : timerWords[running.kind].running}
      sub={`Rings only while this screen is on. ${awakeWords}`}
      way={{ text: "Back to the pieces", onPress: onBack }}
      out={out}
      told={told}
    >
      {running === null ? (
        <>
          <BigKey main onPress={() => timer.start("drain", lengths.drain)}>
            Drain {lengths.drain} s
          </BigKey>
          <BigKey main onPress={() => timer.start("stucco", lengths.stucco)}>
            Wait for stucco {lengths.stucco} s
          </BigKey>
          <BigKey onPress={() => setSetting(true)}>Change the lengths</BigKey>
        </>
      ) : (
        <>
          <p className={styles["digits"]} role="timer">
            {leftS} <small>s</small>
          </p>
          <BigKey main onPress={timer.stop}>
            Stop
          </BigKey>
        </>
      )}
    </BucketScreen>
  );
}
