import { Link } from "wouter";
import { startingBucketLimits } from "../../../logbook/bucket/bucketLimits.ts";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import {
  draftOfLimits,
  limitFields,
  limitGroups,
  limitText,
  readLimits,
  type LimitsDraft,
} from "./limitFields.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What the shop's buckets are judged by, and how long they mix; each in place of a typical value. */
export function BucketLimitsPage() {
  const shop = useFigures();
  const own = shop && draftOfLimits(shop.bucketLimits);
  return (
    <Page title="Slurry limits" back={paths.buckets}>
      <p>
        Typical values. Replace them with your supplier’s data sheet.{" "}
        <Link href={paths.figures} className={sheet["link"]}>
          Where they come from
        </Link>
      </p>
      {own !== undefined && <LimitsForm key={JSON.stringify(own)} own={own} />}
    </Page>
  );
}

function LimitsForm({ own }: { readonly own: LimitsDraft }) {
  const shop = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useEntryForm("bucket-limits", limitFields, { start: own, check: readLimits });
  const { draft } = form;
  const rows = limitGroups.flatMap((group) => group.rows);
  const same = rows.every(([key]) => draft[key] === own[key]);
  const save = () =>
    form.save(
      (bucketLimits) =>
        shop.log(
          { do: "log", stream: shopStream, type: "shop-figures-set", body: { bucketLimits } },
          { quiet: true },
        ),
      () => say("Slurry limits saved."),
    );
  return (
    <form
      className={sheet["stack"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      {limitGroups.map(({ title, rows: of }) => (
        <Card key={title} title={title}>
          <div className={`${sheet["halves"]} ${sheet["top"]}`}>
            {of.map(([key, label]) => (
              <NumberOf
                key={key}
                form={form}
                at={key}
                label={label}
                hint={`Empty: ${limitText(key, startingBucketLimits[key], format)}`}
              />
            ))}
          </div>
        </Card>
      ))}
      <Refused form={form} plain />
      <Button kind="primary" disabledReason={same ? "Nothing is changed." : null} onPress={save}>
        Save the limits
      </Button>
    </form>
  );
}
