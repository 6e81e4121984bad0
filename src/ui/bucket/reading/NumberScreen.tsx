import { useState } from "react";
import { useFormat } from "../../base/state/useFormat.ts";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { Keypad } from "../../base/glove/Keypad.tsx";
import { padNumber, type PadText } from "../../base/glove/keypadText.ts";
import { AnswerKeys } from "./AnswerKeys.tsx";
import { numberFault, numberSteps, padStepOf, unitOf } from "./numberSteps.ts";
import type { NumberStep } from "./readDraft.ts";

/** One number, by the pad. */
export function NumberScreen(props: {
  readonly step: NumberStep;
  readonly value: number | null;
  /** Where the first step from an empty display lands; null for the usual place. */
  readonly from: number | null;
  readonly hint?: string | undefined;
  readonly onNext: (value: number) => void;
  readonly onSkip: () => void;
  readonly onBack: () => void;
}) {
  const { step, value, from, hint, onNext, onSkip, onBack } = props;
  const format = useFormat();
  const asked = numberSteps[step];
  const stepping = padStepOf(asked, format, from);
  const [typed, setTyped] = useState<PadText>(() => ({
    text:
      value === null
        ? ""
        : String(Number(format.toShown(asked.quantity, value).toFixed(Math.max(stepping.digits, 2)))),
    isWhole: value !== null,
  }));
  const [fault, setFault] = useState<{ readonly words: string; readonly turn: number } | null>(null);
  const number = padNumber(typed.text);
  const next = (): void => {
    if (number === null) return;
    const canonical = format.fromShown(asked.quantity, number);
    const words = numberFault(asked, canonical, format);
    if (words === null) onNext(canonical);
    else setFault((before) => ({ words, turn: (before?.turn ?? 0) + 1 }));
  };
  return (
    <BucketScreen
      title={asked.title}
      sub={hint ?? asked.hint}
      way={{ text: "Back", onPress: onBack }}
      told={fault === null ? null : { ...fault, tone: "refused" }}
    >
      <Keypad
        label={asked.title}
        unit={unitOf(asked, format)}
        value={typed}
        onChange={(text) => {
          setTyped(text);
          setFault(null);
        }}
        stepping={stepping}
        onEnter={next}
      />
      <AnswerKeys onSkip={onSkip} onNext={next} ready={number !== null} />
    </BucketScreen>
  );
}
