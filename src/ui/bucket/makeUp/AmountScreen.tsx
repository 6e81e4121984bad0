import { useState } from "react";
import { useFormat } from "../../base/state/useFormat.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { Keypad } from "../../base/glove/Keypad.tsx";
import { padNumber, type PadText } from "../../base/glove/keypadText.ts";
import { numberFault, padStepOf } from "../reading/numberSteps.ts";
import type { AmountAsked } from "./putIn.ts";

/** One amount by the pad; an empty display is none. */
export function AmountScreen(props: {
  readonly asked: AmountAsked;
  readonly value: number;
  readonly onNext: (value: number) => void;
  readonly onBack: () => void;
}) {
  const { asked, value, onNext, onBack } = props;
  const format = useFormat();
  const [typed, setTyped] = useState<PadText>(() => ({
    text: value === 0 ? "" : String(Number(format.toShown(asked.quantity, value).toFixed(2))),
    isWhole: value !== 0,
  }));
  const [fault, setFault] = useState<{ readonly words: string; readonly turn: number } | null>(null);
  const next = (): void => {
    const number = padNumber(typed.text);
    const canonical = number === null ? 0 : format.fromShown(asked.quantity, number);
    const words = number === null ? null : numberFault(asked, canonical, format);
    if (words === null) onNext(canonical);
    else setFault((before) => ({ words, turn: (before?.turn ?? 0) + 1 }));
  };
  return (
    <BucketScreen
      title={asked.title}
      sub={asked.hint}
      way={{ text: "Back", onPress: onBack }}
      told={fault === null ? null : { ...fault, tone: "refused" }}
    >
      <Keypad
        label={asked.title}
        unit={format.unit(asked.quantity)}
        value={typed}
        onChange={(text) => {
          setTyped(text);
          setFault(null);
        }}
        stepping={padStepOf(asked, format, null)}
        onEnter={next}
      />
      <BigKey main onPress={next}>
        {typed.text === "" ? "None of it" : "Take it"}
      </BigKey>
    </BucketScreen>
  );
}
