import { useState } from "react";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { watchText } from "../../base/format/bucketReadingWords.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import sheet from "../../base/styles/sheet.module.css";
import bigKey from "../../base/glove/BigKey.module.css";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { Keypad } from "../../base/glove/Keypad.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { padNumber, type PadText } from "../../base/glove/keypadText.ts";
import { AnswerKeys } from "./AnswerKeys.tsx";
import styles from "./reading.module.css";
import { roundedS, useStopwatch } from "./useStopwatch.ts";
import { usePressDown } from "./usePressDown.ts";

/** One dip of the cup: timed with the big key, or typed where another watch told it. */
export function DipScreen(props: {
  readonly title: string;
  readonly cup: string;
  readonly value: number | null;
  /** Where the first step of the pad lands: what the dip before told. */
  readonly from: number;
  readonly onNext: (seconds: number) => void;
  readonly onSkip: () => void;
  readonly onCup: () => void;
  readonly onBack: () => void;
}) {
  const { title, cup, value, from, onNext, onSkip, onCup, onBack } = props;
  const format = useFormat();
  const watch = useStopwatch();
  const [typed, setTyped] = useState<PadText | null>(null);
  const [stopped, setStopped] = useState<number | null>(value);
  const { low, high } = ranges.cupS;
  const toggle = (): void => {
    if (watch.isRunning) setStopped(watch.stop());
    else watch.start();
  };
  const isTimed = stopped !== null && !watch.isRunning;
  const canTake = stopped !== null && stopped >= low && stopped <= high;
  const primary = (): void => {
    if (isTimed && canTake) onNext(stopped);
    else toggle();
  };
  const back = { text: "Back", onPress: onBack };

  if (typed !== null) {
    const number = padNumber(typed.text);
    const ready = number !== null && number >= low && number <= high;
    const next = (): void => {
      if (number !== null && ready) onNext(number);
    };
    return (
      <BucketScreen title={title} sub={cup} way={back} told={null}>
        <Keypad
          label={title}
          unit="s"
          value={typed}
          onChange={setTyped}
          stepping={{ step: 0.2, digits: 1, from: roundedS(from), low, high }}
          onEnter={next}
        />
        <AnswerKeys onSkip={onSkip} onNext={next} ready={ready} />
      </BucketScreen>
    );
  }
  const shownS = watch.isRunning ? watch.seconds : stopped;
  return (
    <BucketScreen title={title} sub={cup} way={back} onMain={primary} told={null}>
      <p className={styles["digits"]} role="timer" aria-label={`${title}: seconds`}>
        <span>
          {shownS === null ? "–" : watchText(shownS, format.locale)} <small>s</small>
        </span>
      </p>
      {!isTimed && <WatchKey isRunning={watch.isRunning} onDown={toggle} />}
      {isTimed && (
        <>
          <BigKey main onPress={primary} disabled={!canTake}>
            Take {format.show("s", stopped)}
          </BigKey>
          <BigKey onPress={() => setStopped(null)}>Time it again</BigKey>
        </>
      )}
      {!watch.isRunning && (
        <BigKey
          onPress={() =>
            setTyped({ text: stopped === null ? "" : stopped.toFixed(1), isWhole: stopped !== null })
          }
        >
          Type it in
        </BigKey>
      )}
      {!watch.isRunning && !isTimed && (
        <div className={styles["answer"]}>
          <BigKey onPress={onSkip}>Skip</BigKey>
          <BigKey onPress={onCup}>Other cup</BigKey>
        </div>
      )}
      {!watch.isRunning && !isTimed && <HowToLink to="cup" />}
    </BucketScreen>
  );
}

/** Start as the rim leaves the slurry, stop at the first break of the stream: it counts as the finger comes down. */
function WatchKey({ isRunning, onDown }: { readonly isRunning: boolean; readonly onDown: () => void }) {
  const press = usePressDown(onDown);
  return (
    <button
      type="button"
      className={`${sheet["bucketKey"]} ${sheet["press"]} ${bigKey["key"]} ${bigKey["main"]}`}
      {...press}
    >
      <span className={bigKey["verb"]}>{isRunning ? "Stop" : "Start"}</span>
      <span className={bigKey["under"]}>
        {isRunning ? "at the first break of the stream" : "as the rim of the cup leaves the slurry"}
      </span>
    </button>
  );
}
