import { useLocation } from "wouter";
import {
  coatWaterG,
  expectedMassG,
  guessMoment,
  isFirstWeighing,
  type WeighMoment,
} from "../../../logbook/piece/expectedMass.ts";
import { coatCaseOf } from "../../../logbook/drying/shellDrying.ts";
import type { Surroundings } from "../../../logbook/piece/surroundings.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { balanceWords } from "../../base/format/saidWords.ts";
import { weighWords } from "../../base/format/weighWords.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import { Keypad } from "../../base/glove/Keypad.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { ScaleStep } from "./ScaleStep.tsx";
import { ScaleTake } from "./ScaleTake.tsx";
import { typedMassG, scaleOf } from "./weighDraft.ts";
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
  const moment = form.draft.moment ?? guessMoment(piece, now);
  const of = coatCaseOf(piece, coatId, { surroundings: around, recipe, now });
  const expectedG = expectedMassG(moment, { piece, of, drying: outer, shop: around.shop });
  const [{ scaleG: setG, weighUnit: unit }, change] = useSettings();
  const stepping = weighStep(expectedG, format, unit);
  // Empty until touched: what nobody read off a scale is not logged.
  const shown = { text: form.draft.text ?? "", isWhole: form.draft.isWhole };
  const massG = typedMassG(shown, unit, format);
  const toTell = moment === "drying" ? (outer?.toTell ?? null) : null;

  const log = async (): Promise<void> => {
    if (massG === null) return;
    const scaleG = scaleOf(shown, { unit, setG, format });
    await form.send(
      () => shop.log(weighCommand(piece, { moment, massG, scaleG }), { quiet: true }),
      () => {
        say(
          moment === "drying" && isFirstWeighing(of)
            ? "First weighing saved. The piece's page says when to weigh again to compare."
            : `Weighed: ${balanceWords(massG, format)}, ${momentWords[moment].label.toLowerCase()}.`,
        );
        goTo(paths.piece(piece.id));
      },
    );
  };

  return (
    <Page title="Weigh" back={paths.piece(piece.id)}>
      <div className={styles["form"]}>
        <p className={styles["piece"]}>
          {piece.plan.name}
          <small>
            {expectedG === null ? "" : `About ${balanceWords(expectedG, format)} is expected. `}
            Hook and tag on, the same each time.
          </small>
        </p>
        {toTell !== null && <p>{weighWords(toTell, now, format)}</p>}
        <PickOf
          form={form}
          at="moment"
          label="Stage of the coat"
          options={momentsFor(piece).map((value) => ({ value, ...momentWords[value] }))}
          unset={moment}
        />
        <Keypad
          label="Weight"
          unit={format.unit(unit)}
          value={shown}
          onChange={form.set}
          stepping={stepping}
          onEnter={() => void log()}
        />
        <Refused form={form} />
        <Button
          kind="primary"
          size="big"
          disabledReason={massG === null ? "Type the weight." : null}
          onPress={log}
        >
          Log {shown.text === "" ? "" : `${shown.text} ${format.unit(unit)}, `}
          {momentWords[moment].label.toLowerCase()}
        </Button>
        <ScaleTake
          waterG={coatWaterG(of)}
          onTake={(takenG) => {
            const taken = unit === "g" ? format.toShown("g", takenG) : format.toShown("kg", takenG / 1000);
            form.set({ text: taken.toFixed(unit === "g" ? stepping.digits : 3), isWhole: true });
          }}
        />
        <ScaleStep
          setG={setG}
          unit={unit}
          onStep={(scaleG) => void change({ scaleG })}
          onUnit={(weighUnit) => {
            form.set({ text: null });
            void change({ weighUnit });
          }}
        />
        <HowToLink to="weigh" />
        <details>
          <summary>What weighing shows</summary>
          <p>
            Weigh the piece dry before a dip, then drained, then stuccoed. That gives the dry mass it must
            come down to. Every later weighing then gives the water left directly. Without those three, two
            equal weights mean dry. They must be at least half an hour apart, longer on a coarse scale.
          </p>
        </details>
      </div>
    </Page>
  );
}
