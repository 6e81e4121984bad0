import { useRef } from "react";
import { flushSync } from "react-dom";
import { isBeforeFire } from "../../../rules/stage.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { Finding } from "../../../rules/finding.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { ActionBar } from "../../base/parts/ActionBar.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { nextMove } from "../piece/nextMove.ts";
import { holdKey, holdsOf, isSigned, signedReview, type SignDraft } from "./reviewForm.ts";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./ReviewPage.module.css";

/**
 * Sign what the page shows; a hold asks for a reason of its own. Once it is signed the next step stands in its place. The
 * key is in the bar, and where something is missing it leads there.
 */
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
  const [settings, changeSettings] = useSettings();
  const { piece } = standing;
  const form = useForm<SignDraft>(`review/${piece.id}`, { name: settings.signName, reasons: {} });
  const { draft, set, errors } = form;
  const box = useRef<HTMLFormElement>(null);
  const holds = holdsOf(findings);
  if (!isBeforeFire(piece))
    return (
      <div className={css["screen"]}>
        <p className={css["soft"]}>A review is signed before burnout. This piece is past it.</p>
      </div>
    );
  if (isSigned(piece, findings)) return <SignedBar standing={standing} />;

  const sign = async () => {
    const read = signedReview(draft, {
      findings,
      verdict,
      safety: standing.wall.judged?.ratio ?? null,
    });
    flushSync(() => form.tell(read.ok ? {} : read.errors));
    if (!read.ok) return box.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
    const stream = streamOf("piece", piece.id);
    await form.send(
      () => shop.log({ do: "log", stream, type: "review-signed", body: read.value }, { quiet: true }),
      async () => {
        if (settings.signName === "") await changeSettings({ signName: read.value.name });
      },
    );
  };

  return (
    <>
      <div className={css["screen"]}>
        <Card title="Sign">
          <form
            ref={box}
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
          </form>
        </Card>
      </div>
      <ActionBar>
        <Button kind={verdict === "hold" ? "danger" : "primary"} size="big" onPress={sign}>
          {{ hold: "Override and sign", watch: "Sign with warnings", clear: "Sign" }[verdict]}
        </Button>
      </ActionBar>
    </>
  );
}

/** "Signed.", and the key to what comes next. */
function SignedBar({ standing: { piece, action } }: { readonly standing: Standing }) {
  const move = nextMove(piece, action, false);
  return (
    <ActionBar>
      <p role="status" className={css["signed"]}>
        Signed.
      </p>
      {move !== null && (
        <LinkButton kind="primary" href={move.href}>
          {move.name}
        </LinkButton>
      )}
    </ActionBar>
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
  const { title } = findingText(hold, useFormat());
  return (
    <TextField label={`Why go on: ${title}`} multiline value={value} onChange={onChange} error={error} />
  );
}
