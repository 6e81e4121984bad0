import { useEffect } from "react";
import type { Bucket } from "../../logbook/piece.ts";
import { type RackItem, useBuckets, useRack } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { BucketScreen } from "./BucketScreen.tsx";
import { DipChoice } from "./DipChoice.tsx";
import { DipDesk } from "./DipDesk.tsx";
import { type KeptVisit, useKeptVisit } from "./keptVisit.ts";
import { unlockBells } from "../due/bell.ts";
import { useDipVisit } from "./useDipVisit.ts";
import { useSignals } from "./useSignals.ts";

export function DipPage() {
  const items = useRack();
  const buckets = useBuckets();
  const { kept, keep, drop } = useKeptVisit();
  if (items === undefined || buckets === undefined || kept === undefined)
    return (
      <BucketScreen title="At the bucket" way={{ text: "Rack", href: paths.rack }} told={null}>
        {null}
      </BucketScreen>
    );
  return <Dip items={items} buckets={buckets} kept={kept} keep={keep} drop={drop} />;
}

function Dip(props: {
  readonly items: readonly RackItem[];
  readonly buckets: readonly Bucket[];
  readonly kept: KeptVisit | null;
  readonly keep: (visit: KeptVisit) => void;
  readonly drop: () => Promise<void>;
}) {
  const { items, buckets } = props;
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
  if (visit.session === null)
    return <DipChoice items={items} buckets={buckets} told={signals.told} onChosen={visit.start} />;
  return <DipDesk session={visit.session} visit={visit} buckets={buckets} signals={signals} />;
}
