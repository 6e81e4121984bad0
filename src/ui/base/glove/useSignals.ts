import { useCallback, useMemo, useState } from "react";
import { say } from "../../../device/speech.ts";
import { vibrate } from "../../../device/vibrate.ts";
import { useSettings } from "../state/live.ts";
import { useFormat } from "../state/useFormat.ts";
import { bell, tapBell } from "../alarm/bell.ts";

/** What was last told, with a number that rises so that the same words flash again. */
export type SignalMessage = {
  readonly turn: number;
  readonly tone: "done" | "refused" | "ring";
  readonly words: string;
};

/** Flash, tone and words together, as a wet thumb hides one and a fan the other. Vibration is a bonus. */
export function useSignals() {
  const [{ tone, speech }] = useSettings();
  const { locale } = useFormat();
  const [told, setTold] = useState<SignalMessage | null>(null);

  const tell = useCallback(
    (kind: SignalMessage["tone"], words: string) => {
      setTold((before) => ({ turn: (before?.turn ?? 0) + 1, tone: kind, words }));
      if (tone && kind === "ring") bell.ring({ inS: 0, rounds: 3 });
      if (tone && kind !== "ring") tapBell.ring({ inS: 0, rounds: kind === "done" ? 1 : 2 });
      vibrate(kind === "done" ? [80] : [200, 100, 200]);
      if (speech) void say({ text: words, lang: locale });
    },
    [tone, speech, locale],
  );

  return useMemo(
    () => ({
      told,
      done: (words: string) => tell("done", words),
      refused: (words: string) => tell("refused", words),
      ring: (words: string) => tell("ring", words),
    }),
    [told, tell],
  );
}

export type Signals = ReturnType<typeof useSignals>;
