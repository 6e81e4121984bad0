import { useState } from "react";
import { useParams } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { paths } from "../../base/state/paths.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { useBucketStanding } from "../useBucketStanding.ts";
import { AfterAdditionCard } from "./AfterAdditionCard.tsx";
import { AskedCard } from "./AskedCard.tsx";
import { FirstMixCard } from "./FirstMixCard.tsx";
import { LossCard } from "./LossCard.tsx";
import { LostCard } from "./LostCard.tsx";
import { askedMakings, makingsOf, nothingIn } from "../../../logbook/bucket/makeUpSums.ts";
import type { PutInDraft } from "./putIn.ts";
import { PutInScreen } from "./PutInScreen.tsx";
import { RestoreCard } from "./RestoreCard.tsx";
import { WaterCard } from "./WaterCard.tsx";
import css from "./makeUp.module.css";

/** What to put into a bucket, in which order, and what it should read afterwards. */
export function MakeUpPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucketStanding(id);
  if (found === undefined) return <Page title="Make up">{null}</Page>;
  if (found === null)
    return (
      <Page title="Make up" back={paths.buckets}>
        <Empty title="No such bucket">
          <p>It is not in this device’s log.</p>
        </Empty>
      </Page>
    );
  return <MakeUp key={id} standing={found.standing} />;
}

function MakeUp({ standing }: { readonly standing: BucketStanding }) {
  const { bucket, ledger, afterAddition } = standing;
  const { id } = bucket;
  const say = useFleeting((fleeting) => fleeting.say);
  const [puttingIn, setPuttingIn] = useState(false);
  const form = useForm<PutInDraft>(`put-in/${id}`, {
    ...nothingIn,
    what: "top-up",
    litre: 0,
    lid: bucket.tops.findLast(({ lid }) => lid !== undefined)?.lid ?? "on",
    solSilica: null,
  });
  const putIn = (changes: Partial<PutInDraft>): void => {
    form.set({ ...nothingIn, what: "top-up", litre: 0, solSilica: null, ...changes });
    setPuttingIn(true);
  };
  if (puttingIn)
    return (
      <PutInScreen
        standing={standing}
        form={form}
        onOver={(logged) => {
          setPuttingIn(false);
          if (logged) say("Logged. Stir, then check the slurry again.");
        }}
      />
    );
  const asked = askedMakings(standing);
  const isMade = bucket.mixes.length > 0;
  return (
    <Page title={`${bucket.name}: make up`} back={paths.bucket(id)}>
      {afterAddition !== null && <AfterAdditionCard after={afterAddition} bucketId={id} />}
      <AskedCard standing={standing} />
      {asked !== null ? (
        <>
          <Button kind="primary" size="big" onPress={() => putIn(makingsOf(asked, 0.5))}>
            Add half of it
          </Button>
          <div className={css["ways"]}>
            <Button onPress={() => putIn(asked)}>Add all of it</Button>
            <Button onPress={() => putIn({})}>Something else</Button>
          </div>
        </>
      ) : (
        <div className={css["ways"]}>
          <Button onPress={() => putIn({})}>Add material</Button>
          <LinkButton href={paths.bucketRead(id)}>Check the slurry</LinkButton>
        </div>
      )}
      <div className={css["cards"]}>
        <WaterCard standing={standing} />
        {ledger !== null && (
          <RestoreCard
            standing={standing}
            onPutIn={(makings, solSilica) => putIn({ ...makingsOf(makings), solSilica })}
          />
        )}
        <FirstMixCard
          standing={standing}
          isOpen={!isMade}
          onPutIn={(makings, litre) => putIn({ ...makingsOf(makings), litre, what: "batch" })}
        />
        <LossCard standing={standing} />
        <LostCard standing={standing} />
        <Card title="No doses for additives">
          <p>
            Dipbook gives no dose for pH base, biocide, wetting agent or antifoam. They depend on the sol and
            its polymer. Ask the binder’s maker, and note what you added with a check.
          </p>
        </Card>
      </div>
    </Page>
  );
}
