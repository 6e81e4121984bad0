import { useState } from "react";
import { useLocation } from "wouter";
import { coatWaterG, expectedMassG, guessMoment, type WeighMoment } from "../../logbook/expectedMass.ts";
import { coatCaseOf } from "../../logbook/shellDrying.ts";
import type { Surroundings } from "../../logbook/standing.ts";
import { useFleeting } from "../app/fleeting.ts";
import type { RackItem } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { balanceWords } from "../format/saidWords.ts";
import { useForm } from "../log/useForm.ts";
import { Button } from "../parts/Button.tsx";
import { Choice } from "../parts/Choice.tsx";
import { Keypad } from "../parts/Keypad.tsx";
import { padNumber } from "../parts/keypadText.ts";
import { Page } from "../parts/Page.tsx";
import { ScaleTake } from "./ScaleTake.tsx";
import { momentsFor, momentWords, weighCommand, weighStep } from "./weighMoments.ts";
import styles from "./WeighForm.module.css";

type Draft = {
  readonly moment: WeighMoment | null;
  readonly text: string | null;
  readonly isWhole: boolean;
};

export function WeighForm({ item, around }: { readonly item: RackItem; readonly around: Surroundings }) {
  const shop = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const { piece, now, outer, recipe } = item.standing;
  const coatId = piece.coats.at(-1)?.id ?? "";
  const form = useForm<Draft>(`weigh/${piece.id}`, { moment: null, text: null, isWhole: true }, coatId);
  const [refused, setRefused] = useState<string | null>(null);
  const moment = form.draft.moment ?? guessMoment(piece, now);
  const of = coatCaseOf(piece, coatId, { surroundings: around, recipe, now });
  const expectedG = expectedMassG(moment, { piece, of, drying: outer, shop: around.shop });
  const stepping = weighStep(expectedG, format);
  const { text, isWhole } = form.draft;
  const shown =
    text !== null
      ? { text, isWhole }
      : {
          text: expectedG === null ? "" : format.toShown("g", expectedG).toFixed(stepping.digits),
          isWhole: true,
        };
  const number = padNumber(shown.text);

  const log = async (): Promise<void> => {
    if (number === null) return;
    const massG = Math.round(format.fromShown("g", number) * 1000) / 1000;
    const done = await shop.log(weighCommand(piece, { moment, massG }), { quiet: true });
    if (!done.ok) return setRefused(done.text);
    await form.drop();
    say(`Weighed: ${balanceWords(massG, format)}, ${momentWords[moment].label.toLowerCase()}.`);
    goTo(paths.piece(piece.id));
  };

  return (
    <Page title="Weigh" back={paths.piece(piece.id)}>
      <div className={styles["form"]}>
        <p className={styles["piece"]}>
          {piece.plan.name}
          <small>
            {expectedG === null
              ? "Nothing is known yet of what it weighs."
              : `About ${balanceWords(expectedG, format)} is expected. Hook and tag on, the same each time.`}
          </small>
        </p>
        <Keypad
          label="Weight"
          unit={format.unit("g")}
          value={shown}
          onChange={(next) => {
            setRefused(null);
            form.set(next);
          }}
          stepping={stepping}
          onEnter={() => void log()}
        />
        {refused !== null && (
          <p role="alert" className={styles["refused"]}>
            {refused}
          </p>
        )}
        <Button
          kind="primary"
          size="big"
          disabledReason={number === null ? "Type what the balance shows." : null}
          onPress={log}
        >
          Log {shown.text === "" ? "" : `${shown.text} ${format.unit("g")}, `}
          {momentWords[moment].label.toLowerCase()}
        </Button>
        <ScaleTake
          waterG={coatWaterG(of)}
          onTake={(massG) => {
            setRefused(null);
            form.set({ text: format.toShown("g", massG).toFixed(stepping.digits), isWhole: true });
          }}
        />
        <Choice
          label="When in the coat's life"
          options={momentsFor(piece).map((value) => ({ value, ...momentWords[value] }))}
          value={moment}
          onChange={(next) => form.set({ moment: next })}
        />
        <details>
          <summary>What weighing tells</summary>
          <p>
            Weighed dry before a dip, drained and stuccoed, a piece has a dry mass it must come down to: dry
            piece, slurry without its water, and stucco. Every weighing after that gives the water left, with
            no drying curve in it. Without those three, two weighings half an hour apart that agree say dry;
            the balance must tell a twentieth of the coat's water.
          </p>
        </details>
      </div>
    </Page>
  );
}
