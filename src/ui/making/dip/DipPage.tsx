import { useEffect, useState } from "react";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { type RackItem, useBuckets, useFigures, useRack } from "../../base/state/live.ts";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { DipChoice } from "./DipChoice.tsx";
import { DipSessionView } from "./DipSessionView.tsx";
import { wantsLook } from "../../../logbook/bucket/bucketLook.ts";
import type { DipPlan } from "../../../logbook/dip/dipPlan.ts";
import { LookScreen } from "./LookScreen.tsx";
import { doneDipping } from "./doneDipping.ts";
import { useBucketLooks } from "./useBucketLooks.ts";
import { type SavedVisit, useSavedVisit } from "./savedVisit.ts";
import { unlockBells } from "../../base/alarm/bell.ts";
import { useDipVisit } from "./useDipVisit.ts";
import { useSignals } from "../../base/glove/useSignals.ts";

export function DipPage() {
  const items = useRack();
  const buckets = useBuckets();
  const shop = useFigures();
  const { kept, keep, drop } = useSavedVisit();
  if (items === undefined || buckets === undefined || shop === undefined || kept === undefined)
    return (
      <BucketScreen title="At the bucket" way={null} out={doneDipping} told={null}>
        {null}
      </BucketScreen>
    );
  return <Dip items={items} buckets={buckets} shop={shop} kept={kept} keep={keep} drop={drop} />;
}

function Dip(props: {
  readonly items: readonly RackItem[];
  readonly buckets: readonly Bucket[];
  readonly shop: Shop;
  readonly kept: SavedVisit | null;
  readonly keep: (visit: SavedVisit) => void;
  readonly drop: () => Promise<void>;
}) {
  const { items, buckets, shop } = props;
  const looks = useBucketLooks(buckets, shop);
  const [looking, setLooking] = useState<DipPlan | null>(null);
  const signals = useSignals();
  const visit = useDipVisit({ ...props, signals });
  useEffect(() => {
    const unlock = (): void => void unlockBells();
    window.addEventListener("pointerup", unlock);
    window.addEventListener("keyup", unlock);
    return () => {
      window.removeEventListener("pointerup", unlock);
      window.removeEventListener("keyup", unlock);
    };
  }, []);
  const start = (plan: DipPlan): void => {
    setLooking(null);
    visit.start(plan);
  };
  const look = looking === null ? undefined : looks.get(looking.bucketId);
  if (visit.session === null && looking !== null && look !== undefined)
    return (
      <LookScreen
        standing={look}
        signals={signals}
        onGoOn={() => start(looking)}
        onBack={() => setLooking(null)}
      />
    );
  if (visit.session === null)
    return (
      <DipChoice
        items={items}
        buckets={buckets}
        looks={looks}
        told={signals.told}
        onChosen={(plan) => {
          const chosen = looks.get(plan.bucketId);
          if (chosen !== undefined && wantsLook(chosen)) setLooking(plan);
          else start(plan);
        }}
      />
    );
  return (
    <DipSessionView
      session={visit.session}
      visit={visit}
      buckets={buckets}
      signals={signals}
      look={looks.get(visit.session.bucketId)}
      shop={shop}
    />
  );
}
