import { addDays } from "date-fns/addDays";
import { useEffect, useState } from "react";
import { makeMemo } from "../../../logbook/log/memo.ts";
import { useFigures, useMelts, usePours, useRackData, useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { bucketSpans } from "../timeline/bucketSpans.ts";
import { lookAhead, type NextPour } from "./lookAhead.ts";

/** A day asked about: the moment metal moves, and the planned pour it is that of. */
export type AskedDay = { readonly pourAt: number; readonly pourId: string | null };

export type Looking = {
  /** The last answer; it stands while the next is worked out. */
  readonly found: NextPour | null;
  /** How far the next answer is; null where none is under way. */
  readonly step: { readonly done: number; readonly of: number } | null;
  /** True where the last look broke off, because a sum could not be done. */
  readonly isBroken: boolean;
  readonly again: () => void;
};

/** Coats may have to go on so many days past the day asked about, for the first day on which a piece could go. */
const daysBeyond = 40;

const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** The proposal for a day, worked out anew where log, settings or day change, or when it is asked for again. */
export function useNextPour({ pourAt, pourId }: AskedDay): Looking {
  const { clock } = useShop();
  const rack = useRackData();
  const shop = useFigures();
  const melts = useMelts("ended");
  const pours = usePours("open");
  const [{ bucketHours }] = useSettings();
  const [found, setFound] = useState<NextPour | null>(null);
  const [step, setStep] = useState<Looking["step"]>(null);
  const [isBroken, setBroken] = useState(false);
  const [asked, ask] = useState(() => ({ at: clock() }));
  const [memo] = useState(makeMemo);
  useEffect(() => {
    if (rack === undefined || shop === undefined || melts === undefined || pours === undefined) return;
    let gone = false;
    const now = Math.max(asked.at, clock());
    const to = addDays(Math.max(now, pourAt), daysBeyond).getTime();
    const spans = bucketSpans(bucketHours, { from: now, to });
    const hours = spans.length === 0 ? null : spans;
    const look = async (): Promise<void> => {
      const answer = await lookAhead(
        { rack, shop, melts, pours, pourId, pourAt, hours, now, memo },
        async (done, of) => {
          if (gone) return false;
          setStep({ done, of });
          setBroken(false);
          await breath();
          return !gone;
        },
      );
      if (answer === null || gone) return;
      setFound(answer);
      setStep(null);
    };
    const brokeOff = (): void => {
      if (gone) return;
      setFound(null);
      setStep(null);
      setBroken(true);
    };
    void look().catch(brokeOff);
    return () => {
      gone = true;
    };
  }, [rack, shop, melts, pours, bucketHours, pourAt, pourId, clock, memo, asked]);
  return { found, step, isBroken, again: () => ask({ at: clock() }) };
}
