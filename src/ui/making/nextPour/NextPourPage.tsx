import { addDays } from "date-fns/addDays";
import { useState } from "react";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { useDraft, usePours } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { Page } from "../../base/parts/Page.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { DayCard } from "./DayCard.tsx";
import { NextPourView } from "./NextPourView.tsx";
import type { AskedDay } from "./useNextPour.ts";

/** What could be poured together next, and what has to be done for it: a proposal that writes nothing. */
export function NextPourPage() {
  const pours = usePours("open");
  return (
    <Page title="Next pour day" back={paths.fire}>
      <p className={sheet["lead"]}>
        A proposal from estimates; it changes nothing. The shell review and the pour sheet decide what is
        poured.
      </p>
      {pours !== undefined && <NextPour pours={pours} />}
    </Page>
  );
}

type Kept = { readonly pourId: string | null; readonly pourAt: number | null };

function NextPour({ pours }: { readonly pours: readonly Pour[] }) {
  const { clock } = useShop();
  const now = Math.max(useNow(), clock());
  const [weekOn] = useState(() => afternoonIn(7, clock()));
  const planned = pours
    .filter(({ plan }) => plan.pourAt > now)
    .toSorted((a, b) => a.plan.pourAt - b.plan.pourAt);
  const [kept, keep, , looked] = useDraft<Kept>("next-pour", {
    pourId: planned[0]?.id ?? null,
    pourAt: null,
  });
  if (!looked) return null;
  const day = dayOf(kept, { planned, now, weekOn });
  return (
    <>
      <DayCard day={day} planned={planned} now={now} onChange={keep} />
      <NextPourView day={day} now={now} />
    </>
  );
}

/** A kept day that is over, or a plan that was cancelled, gives way to the afternoon in a week. */
function dayOf(
  { pourId, pourAt }: Kept,
  {
    planned,
    now,
    weekOn,
  }: { readonly planned: readonly Pour[]; readonly now: number; readonly weekOn: number },
): AskedDay {
  const pour = planned.find(({ id }) => id === pourId);
  if (pour !== undefined) return { pourId: pour.id, pourAt: pour.plan.pourAt };
  return { pourId: null, pourAt: pourAt !== null && pourAt > now ? pourAt : weekOn };
}

/** Two in the afternoon so many days on, by the device's own clock. */
function afternoonIn(days: number, now: number): number {
  const at = addDays(now, days);
  at.setHours(14, 0, 0, 0);
  return at.getTime();
}
