import { useCallback, useEffect, useRef } from "react";
import { useLocation } from "wouter";
import { lookAtDues, type Look, type LastLook } from "../../../device/dueAlarm.ts";
import { showNotice } from "../../../device/notify.ts";
import { say as speak } from "../../../device/speech.ts";
import { vibrate } from "../../../device/vibrate.ts";
import { paths } from "../state/paths.ts";
import { useFleeting } from "../state/fleeting.ts";
import { useSettings } from "../state/live.ts";
import { useShop } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import { useNow } from "../state/useNow.ts";
import { useAlarmSources } from "./alarmSources.ts";
import { bell, unlockBells } from "./bell.ts";
import type { AlarmSource, RingDue } from "./ringDue.ts";
import { cameDueWords } from "./ringLabel.ts";

const lookEveryMs = 10_000;
/** Fire and metal ring longer than a coat that waits. */
const rounds = { listed: 4, rung: 6 } as const;
const shakesMs = { listed: [300, 150, 300], rung: [300, 150, 300, 150, 300] } as const;

/**
 * Rings what comes due while the app lives, on whatever screen, and tells once what came due while it did not. Due
 * times are absolute and worked out anew from the log on start, on becoming visible and at every look, so no timer
 * has to survive. Draws nothing.
 */
export function Ringer(): null {
  const { clock } = useShop();
  const sources = useAlarmSources((list) => list.sources);
  const [{ lastSeenDueAt, tone, speech }, changeSettings] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  const now = useNow(lookEveryMs);
  const [place] = useLocation();
  // Rack and Due list what came due themselves: one message for it is enough.
  const isListedHere = place === paths.rack || place === paths.due;
  const seen = useRef(new Map<string, LastLook>());

  const ring = useCallback(
    ({ id, words, notice, path }: RingDue, missed: AlarmSource["missed"]): void => {
      tell(words);
      if (tone) bell.ring({ inS: 0, rounds: rounds[missed] });
      vibrate(shakesMs[missed]);
      if (speech) void speak({ text: words, lang: locale });
      void showNotice({ tag: id, ...notice, path });
    },
    [tell, tone, speech, locale],
  );

  /** Told to someone who has the app before them; what came due unseen waits in the list until it is looked at. */
  const noteSeen = useCallback(
    (dues: readonly RingDue[], { ringNow }: Look<RingDue>, nowMs: number): void => {
      const unseen = dues.filter(({ dueMs }) => dueMs > lastSeenDueAt && dueMs <= nowMs);
      const toldNow = unseen.length > 0 && unseen.every(({ id }) => ringNow.some((due) => due.id === id));
      // The first time here: what lies in the past was never promised to anyone.
      if (lastSeenDueAt === 0 || (toldNow && document.visibilityState === "visible"))
        void changeSettings({ lastSeenDueAt: nowMs });
    },
    [lastSeenDueAt, changeSettings],
  );

  useEffect(() => {
    const nowMs = Math.max(now, clock());
    for (const { key, dues, since, missed } of sources.values()) {
      const first: LastLook = { atMs: since === 0 ? nowMs : since, waiting: [] };
      const look = lookAtDues({ dues, seen: seen.current.get(key) ?? first, nowMs });
      seen.current.set(key, look.seen);
      for (const due of look.ringNow) ring(due, missed);
      if (missed === "rung") for (const due of look.whileClosed) ring(due, missed);
      if (missed !== "listed") continue;
      if (look.whileClosed.length > 0 && !isListedHere) tell(cameDueWords(look.whileClosed));
      noteSeen(dues, look, nowMs);
    }
  }, [sources, now, clock, tell, ring, noteSeen, isListedHere]);

  useEffect(() => {
    if (!tone) return undefined;
    const unlock = (): void => {
      if (bell.state() === "locked") void unlockBells();
    };
    window.addEventListener("pointerup", unlock);
    window.addEventListener("keyup", unlock);
    return () => {
      window.removeEventListener("pointerup", unlock);
      window.removeEventListener("keyup", unlock);
    };
  }, [tone]);
  return null;
}
