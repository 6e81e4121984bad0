import { placeBeeps, ringing } from "./tonePattern.ts";

/** "locked": the browser wants a touch first. "missing": it has no Web Audio. */
export type ToneState = "ready" | "locked" | "missing";

export type Bell = {
  /** Call it from a touch: browsers let no page sound before one. */
  readonly unlock: () => Promise<ToneState>;
  readonly state: () => ToneState;
  /**
   * Rings `inS` seconds from now, for so many rounds of 1.6 s, in place of any ringing set before.
   *
   * Set ahead it keeps time while timers are held back, but the audio clock stands still with the phone asleep:
   * set it again when the page is back in sight. Says whether it will sound, as far as a page can know; a phone's
   * mute switch it cannot see.
   */
  readonly ring: (when: { readonly inS: number; readonly rounds: number }) => ToneState;
  readonly silence: () => void;
  readonly close: () => Promise<void>;
};

/** One bell for the page. It makes its audio clock at the first `unlock` or `ring`, none before. */
export function makeBell(): Bell {
  let context: AudioContext | null = null;
  let takeBack: (() => void) | null = null;

  const clock = (): AudioContext | null => {
    if (context === null && "AudioContext" in globalThis) context = new AudioContext();
    return context;
  };
  const state = (): ToneState => {
    if (!("AudioContext" in globalThis)) return "missing";
    return context?.state === "running" ? "ready" : "locked";
  };
  const silence = (): void => {
    takeBack?.();
    takeBack = null;
  };

  return {
    state,
    silence,
    unlock: async () => {
      const audio = clock();
      // Without a touch `resume` waits for one, perhaps for ever.
      if (audio !== null) await Promise.race([audio.resume().catch(() => undefined), pause(unlockMs)]);
      return state();
    },
    ring: ({ inS, rounds }) => {
      silence();
      const audio = clock();
      if (audio?.state === "running")
        takeBack = placeBeeps(audio, { beeps: ringing(rounds), fromS: audio.currentTime + Math.max(0, inS) });
      return state();
    },
    close: async () => {
      silence();
      const audio = context;
      context = null;
      await audio?.close().catch(() => undefined);
    },
  };
}

const unlockMs = 1000;

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, ms);
  });
}
