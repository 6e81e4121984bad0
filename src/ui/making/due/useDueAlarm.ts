import { useCallback, useEffect, useMemo, useRef } from "react";
import { setBadge } from "../../../device/badge.ts";
import { lookAtDues, type Seen } from "../../../device/dueAlarm.ts";
import { showNotice } from "../../../device/notify.ts";
import { say as speak } from "../../../device/speech.ts";
import { vibrate } from "../../../device/vibrate.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useRack, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { bell, unlockBells } from "../../base/alarm/bell.ts";
import { type DueTime, dueTimes } from "../../base/alarm/dueTimes.ts";
import { cameDueWords, dueWords } from "./dueWords.ts";

const lookEveryMs = 15_000;
const rounds = 4;

/**
 * Rings what comes due while the app lives, and tells once what came due while it did not. Due times are absolute
 * and reckoned anew from the log on start, on becoming visible and at every look, so no timer has to survive.
 */
export function useDueAlarm(): void {
  const { clock } = useShop();
  const items = useRack();
  const [settings, changeSettings] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  const now = useNow(lookEveryMs);
  const seen = useRef<Seen | null>(null);
  const dues = useMemo(() => items && dueTimes(items.map((item) => item.standing)), [items]);
  const { lastSeenDueAt, tone, speech } = settings;

  const ring = useCallback(
    (due: DueTime): void => {
      const words = dueWords(due);
      tell(words);
      if (tone) bell.ring({ inS: 0, rounds });
      vibrate([300, 150, 300]);
      if (speech) void speak({ text: words, lang: locale });
      void showNotice({ tag: due.id, title: due.name, body: words, path: paths.piece(due.pieceId) });
    },
    [tell, tone, speech, locale],
  );

  useEffect(() => {
    if (dues === undefined) return;
    const nowMs = Math.max(now, clock());
    if (lastSeenDueAt === 0) {
      // The first time here: what lies in the past was never promised to anyone.
      seen.current ??= { atMs: nowMs, waiting: [] };
      void changeSettings({ lastSeenDueAt: nowMs });
    }
    const look = lookAtDues({ dues, seen: seen.current ?? { atMs: lastSeenDueAt, waiting: [] }, nowMs });
    seen.current = look.seen;
    if (look.whileClosed.length > 0) tell(cameDueWords(look.whileClosed));
    for (const due of look.ringNow) ring(due);
    const unseen = dues.filter(({ dueMs }) => dueMs > lastSeenDueAt && dueMs <= nowMs);
    const toldNow = unseen.length > 0 && unseen.every(({ id }) => look.ringNow.some((due) => due.id === id));
    // Told to someone who has the app before them; what came due unseen waits in the list until it is looked at.
    if (toldNow && document.visibilityState === "visible") void changeSettings({ lastSeenDueAt: nowMs });
  }, [dues, now, clock, lastSeenDueAt, changeSettings, tell, ring]);

  const ready = dues?.filter(({ dueMs }) => dueMs <= now).length;
  useEffect(() => {
    if (ready !== undefined) void setBadge(ready);
  }, [ready]);

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
}
