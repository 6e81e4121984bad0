import { useCallback, useEffect, useRef } from "react";
import { lookAtDues, type Seen } from "../../../device/dueAlarm.ts";
import { showNotice } from "../../../device/notify.ts";
import { say as speak } from "../../../device/speech.ts";
import { vibrate } from "../../../device/vibrate.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { bell } from "../../base/alarm/bell.ts";
import { instructionWords } from "./instructionWords.ts";
import type { StepDue } from "./runDues.ts";

const rounds = 6;

/** Rings each instruction of a run once as its time comes, while the app lives. */
export function useRunAlarm(runId: string, dues: readonly StepDue[], now: number): void {
  const [{ tone, speech }] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  const seen = useRef<Seen | null>(null);
  const ring = useCallback(
    (due: StepDue): void => {
      const { title, says } = instructionWords[due.code];
      tell(title);
      if (tone) bell.ring({ inS: 0, rounds });
      vibrate([300, 150, 300, 150, 300]);
      if (speech) void speak({ text: title, lang: locale });
      void showNotice({ tag: due.id, title, body: says, path: paths.run(runId) });
    },
    [tell, tone, speech, locale, runId],
  );
  useEffect(() => {
    const look = lookAtDues({ dues, seen: seen.current ?? { atMs: now, waiting: [] }, nowMs: now });
    seen.current = look.seen;
    for (const due of [...look.ringNow, ...look.whileClosed]) ring(due);
  }, [dues, now, ring]);
}
