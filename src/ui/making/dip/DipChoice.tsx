import { useState } from "react";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import type { RackItem } from "../../base/state/live.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { heldStandings } from "../../../rules/coverHold.ts";
import { type DipPlan, kindsOf, wantedDips } from "../../../logbook/dip/dipPlan.ts";
import { doneDipping } from "./doneDipping.ts";
import { kindTitle, planTitle, wantedWords } from "./dipWords.ts";
import { pagesOf } from "../../base/glove/pages.ts";
import { LookLine } from "./LookLine.tsx";
import type { BucketLooks } from "./useBucketLooks.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

type Props = {
  readonly items: readonly RackItem[];
  readonly buckets: readonly Bucket[];
  readonly looks: BucketLooks;
  readonly told: SignalMessage | null;
  readonly onChosen: (plan: DipPlan) => void;
};

/** Which bucket, which coat: asked once a visit. What the rack asks for is offered first. */
export function DipChoice({ items, buckets, looks, told, onChosen }: Props) {
  const [step, setStep] = useState<"wanted" | "buckets" | Bucket>("wanted");
  const [page, setPage] = useState(0);
  const standings = items.map((item) => item.standing);
  const wanted = wantedDips(standings, buckets, heldStandings(items));

  if (step === "wanted" && wanted.length > 0)
    return (
      <BucketScreen title="What are you dipping?" way={null} out={doneDipping} told={told}>
        {wanted.slice(0, 3).map((dip) => (
          <BigKey
            key={dip.kind}
            main={dip.ready > 0}
            under={<LookLine look={looks.get(dip.bucketId)}>{wantedWords(dip)}</LookLine>}
            onPress={() => onChosen(dip)}
          >
            {planTitle(dip, buckets)}
          </BigKey>
        ))}
        <BigKey onPress={() => setStep("buckets")}>Another bucket or coat</BigKey>
      </BucketScreen>
    );

  if (typeof step === "object")
    return (
      <BucketScreen
        title={`${step.name}: which coat?`}
        way={{ text: "Other bucket", onPress: () => setStep("buckets") }}
        out={doneDipping}
        told={told}
      >
        {kindsOf(step).map((kind) => (
          <BigKey key={kind} main onPress={() => onChosen({ bucketId: step.id, kind })}>
            {kindTitle(kind)}
          </BigKey>
        ))}
      </BucketScreen>
    );

  const open = buckets.filter((bucket) => !bucket.retired);
  const pages = pagesOf(open, { alone: 4, paged: 3 });
  return (
    <BucketScreen
      title="Which bucket?"
      way={wanted.length > 0 ? { text: "Back", onPress: () => setStep("wanted") } : null}
      out={doneDipping}
      told={told}
    >
      {pages.at(page).map((bucket) => (
        <BigKey
          key={bucket.id}
          main
          under={<LookLine look={looks.get(bucket.id)}>{bucket.slurry}</LookLine>}
          onPress={() => {
            const kinds = kindsOf(bucket);
            const [only] = kinds;
            if (only !== undefined && kinds.length === 1) onChosen({ bucketId: bucket.id, kind: only });
            else setStep(bucket);
          }}
        >
          {bucket.name}
        </BigKey>
      ))}
      {pages.count > 1 && <BigKey onPress={() => setPage(page + 1)}>More buckets</BigKey>}
      {open.length === 0 && <p>No bucket is in use. Add one under Shop, then come back.</p>}
    </BucketScreen>
  );
}
