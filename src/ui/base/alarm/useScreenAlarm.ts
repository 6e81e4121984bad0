import { useState } from "react";
import { hush } from "../../../device/speech.ts";
import { bell, unlockBells } from "./bell.ts";
import { useAwake } from "./useAwake.ts";

/** The alarm that works because the screen stays on: started with a touch, which also lets the page sound. */
export function useScreenAlarm() {
  const [on, setOn] = useState(false);
  const awake = useAwake(on);
  return {
    /** True only while the screen is really held on. */
    holds: on && awake.state === "held",
    on,
    words: on ? awake.words : null,
    start: async (): Promise<void> => {
      setOn(true);
      await unlockBells();
    },
    stop: (): void => {
      setOn(false);
      bell.silence();
      hush();
    },
  };
}
