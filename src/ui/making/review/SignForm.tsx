import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { Finding } from "../../../rules/finding.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { holdKey, holdsOf, signedReview, type SignDraft } from "./reviewForm.ts";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./ReviewPage.module.css";

/** Sign what the page shows. A hold asks for a reason of its own. */
export function SignForm({
  standing,
  findings,
  verdict,
}: {
  readonly standing: Standing;
  readonly findings: readonly Finding[];
  readonly verdict: "hold" | "watch" | "clear";
}) {
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [settings, changeSettings] = useSettings();
  const { piece } = standing;
  const form = useForm<SignDraft>(`review/${piece.id}`, { name: settings.signName, reasons: {} });
  const { draft, set, errors } = form;
  const holds = holdsOf(findings);
  const open = piece.phase === "coating" || piece.phase === "reviewed";

  const sign = async () => {
    const read = signedReview(draft, {
      findings,
      verdict,
      safety: standing.wall.judged?.ratio ?? null,
    });
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const stream = streamOf("piece", piece.id);
    await form.send(
      () => shop.log({ do: "log", stream, type: "review-signed", body: read.value }, { quiet: true }),
      async () => {
        if (settings.signName === "") await changeSettings({ signName: read.value.name });
        say("Signed.");
      },
    );
  };

  return (
    <Card title="Sign">
      <form
        className={css["sign"]}
        onSubmit={(event) => {
          event.preventDefault();
          void sign();
        }}
      >
        {holds.map((hold) => (
          <HoldReason
            key={holdKey(hold)}
            hold={hold}
            value={draft.reasons[holdKey(hold)] ?? ""}
            error={errors[`reasons.${holdKey(hold)}`]}
            onChange={(reason) => {
              set({ reasons: { ...draft.reasons, [holdKey(hold)]: reason } });
              form.tell({ ...errors, [`reasons.${holdKey(hold)}`]: undefined });
            }}
          />
        ))}
        <TextOf form={form} at="name" label="Name" />
        <p className={css["soft"]}>
          Your name goes under this page as it is now. It means you looked, not that the shell is safe.
        </p>
        <Refused form={form} plain />
        <Button
          kind={verdict === "hold" ? "danger" : "primary"}
          size="big"
          disabledReason={open ? null : "A review is signed before burnout. This piece is past it."}
          onPress={sign}
        >
          {verdict === "hold" ? "Override and sign" : `Sign as ${verdict}`}
        </Button>
      </form>
    </Card>
  );
}

function HoldReason({
  hold,
  value,
  error,
  onChange,
}: {
  readonly hold: Finding;
  readonly value: string;
  readonly error: string | undefined;
  readonly onChange: (reason: string) => void;
}) {
  const { title, says } = findingText(hold, useFormat());
  return (
    <TextField
      label={`Why go on: ${title}`}
      multiline
      value={value}
      onChange={onChange}
      hint={says}
      error={error}
    />
  );
}
