import { millisecondsInHour as hourMs } from "date-fns/constants";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import type { DipOut } from "../../../logbook/bucket/bucketLedger.ts";
import { bucketStandingOf, type BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { dipsFrom } from "../../../logbook/bucket/dippedOut.ts";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { useBucket, useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { useTaken } from "../../shop/stock/useTaken.ts";
import { AnswerScreen } from "./AnswerScreen.tsx";
import { emptyReading, type ReadDraft } from "./readDraft.ts";
import { ReadSteps } from "./ReadSteps.tsx";

/** A reading at the bucket, one number a screen, then what it says. */
export function ReadPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucket(id);
  const shop = useFigures();
  const dipped = useTaken();
  const way = { text: "Buckets", href: paths.buckets };
  if (found === undefined || shop === undefined || dipped === undefined)
    return (
      <BucketScreen title="Check the slurry" way={way} told={null}>
        {null}
      </BucketScreen>
    );
  if (found === null)
    return (
      <BucketScreen title="No such bucket" way={way} told={null}>
        <p>It is not in this device's log.</p>
      </BucketScreen>
    );
  return <Reading key={id} bucket={found.bucket} shop={shop} dips={dipsFrom(dipped.taken, id)} />;
}

function Reading({
  bucket,
  shop,
  dips,
}: {
  readonly bucket: Bucket;
  readonly shop: Shop;
  readonly dips: readonly DipOut[];
}) {
  const { clock } = useShop();
  const [, goTo] = useLocation();
  const [standing] = useState(() => bucketStandingOf(bucket, shop, clock(), dips));
  const form = useForm<ReadDraft>(`read/${bucket.id}`, startOf(standing));
  const [loggedId, setLoggedId] = useState<string | null>(null);
  if (loggedId !== null)
    return (
      <AnswerScreen
        bucket={bucket}
        shop={shop}
        dips={dips}
        readingId={loggedId}
        onUndone={() => setLoggedId(null)}
        onOver={() => goTo(paths.bucket(bucket.id))}
      />
    );
  if (!form.isLooked)
    return (
      <BucketScreen title="Check the slurry" way={{ text: "Buckets", href: paths.buckets }} told={null}>
        {null}
      </BucketScreen>
    );
  return <ReadSteps standing={standing} shop={shop} form={form} onLogged={setLoggedId} />;
}

/** An addition this fresh is what the reading is taken for. */
const justMs = 6 * hourMs;

/** The cup and the way it was read last; after an addition that nobody has read yet it is taken as left. */
function startOf({ aim, readings, last, bucket, now }: BucketStanding): ReadDraft {
  const density = readings.findLast((one) => one.density !== null);
  const plate = readings.findLast(({ reading }) => reading.plateCm2 !== undefined);
  const top = bucket.tops.at(-1);
  const cupId = readings.findLast(({ reading }) => reading.cupId !== undefined)?.reading.cupId;
  return {
    ...emptyReading,
    cupId: aim.cup?.id ?? cupId ?? null,
    how: density?.density?.how ?? "weighed",
    weighedMl: density?.reading.weighedMl ?? emptyReading.weighedMl,
    plateCm2: plate?.reading.plateCm2 ?? emptyReading.plateCm2,
    asLeft: top !== undefined && now - top.at < justMs && (last === null || last.at < top.at),
  };
}
