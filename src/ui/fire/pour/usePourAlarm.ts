import { useCallback, useEffect, useRef } from "react";
import { showNotice } from "../../../device/notify.ts";
import { say as speak } from "../../../device/speech.ts";
import { vibrate } from "../../../device/vibrate.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { bell } from "../../base/alarm/bell.ts";
import { ringsAt, type PourDue } from "./pourDues.ts";

const rounds = 6;
/** Rings each thing of a pour day as its time comes, while this screen lives. */
export function usePourAlarm(pourId: string, dues: readonly PourDue[], now: number): void {
  const [{ tone, speech }] = useSettings();
  const { locale } = useFormat();
  const tell = useFleeting((fleeting) => fleeting.say);
  const rung = useRef<ReadonlySet<string> | null>(null);
  const ring = useCallback(
    ({ id, title, says }: PourDue): void => {
      tell(title);
      if (tone) bell.ring({ inS: 0, rounds });
      vibrate([300, 150, 300, 150, 300]);
      if (speech) void speak({ text: title, lang: locale });
      void showNotice({ tag: id, title, body: says, path: paths.pour(pourId) });
    },
    [tell, tone, speech, locale, pourId],
  );
  useEffect(() => {
    const look = ringsAt(dues, { rung: rung.current ?? new Set(), now, isFirst: rung.current === null });
    rung.current = look.rung;
    for (const due of look.ring) ring(due);
  }, [dues, now, ring]);
}
