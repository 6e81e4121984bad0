import { useEffect, useState } from "react";
import { type AwakeState, keepAwake } from "../../../device/wakeLock.ts";

const words: Record<AwakeState | "off", string> = {
  held: "The screen stays on.",
  paused: "The screen stays on again once you are back here.",
  denied: "The screen may go dark: touch it now and then.",
  missing: "The screen may go dark: set its auto-lock to never.",
  off: "The screen may go dark: it is set so in Settings.",
};

/** Keeps the screen on while the caller is shown and `wanted`, and says in words whether it does. */
export function useAwake(wanted: boolean): { readonly state: AwakeState | "off"; readonly words: string } {
  const [state, setState] = useState<AwakeState>("paused");
  useEffect(() => {
    if (!wanted) return undefined;
    const awake = keepAwake(setState);
    return () => void awake.stop();
  }, [wanted]);
  const now = wanted ? state : "off";
  return { state: now, words: words[now] };
}
