import type { Shop } from "../../../logbook/piece/piece.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { fireFacts } from "../../../logbook/fire/fireFacts.ts";
import { firingForOf } from "../../../logbook/fire/runBasis.ts";
import { loggedSegments } from "../../../logbook/fire/runStanding.ts";
import { planFiring } from "../../../physics/heat/firingSchedule.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import type { RackItem } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Card } from "../../base/parts/Card.tsx";
import { FindingBlock } from "./FindingBlock.tsx";
import { gapWords } from "./gapWords.ts";
import { PlanChoices, PlanKiln } from "./PlanChoices.tsx";
import { PlanFacts } from "./PlanFacts.tsx";
import { PlanResult } from "./PlanResult.tsx";
import type { PlanDraft } from "../../../logbook/fire/planDraft.ts";
import { askedOf, chosenKiln, startingDraft, wayOf } from "../../../logbook/fire/planDraft.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { leaveOf, hottestLeave, plannedShells } from "../../../logbook/pour/leaveHeat.ts";
import { scheduleRefusalText } from "./scheduleWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

type Props = {
  readonly items: readonly RackItem[];
  readonly shop: Shop;
  /** Pours that are planned: what one says of its shells stands for them here too. */
  readonly pours: readonly Pour[];
  readonly asked: {
    readonly purpose: PlanDraft["purpose"];
    readonly pieceIds: readonly string[];
    readonly about: string;
  };
  readonly onSaved: (runId: string) => void;
};

export function RunPlan({ items, shop, pours, asked: from, onSaved }: Props) {
  const door = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<PlanDraft>("run/new", startingDraft(from.purpose, from.pieceIds), from.about);
  const { draft, set } = form;
  const chosen = items.filter(({ standing }) => draft.pieceIds.includes(standing.piece.id));
  const kilns = shop.kilns.filter(({ retired }) => !retired);
  const kiln = chosenKiln(draft, kilns);
  const facts = chosen.map(({ standing }) => fireFacts(standing, draft.family, draft.told));
  const planned = plannedShells(pours);
  const preheatC = hottestLeave(
    chosen.map(({ standing }) => leaveOf(standing, { shop, planned: planned.get(standing.piece.id) })),
  );
  const asked = askedOf(draft, { facts, kiln: kiln?.kiln ?? null, preheatC });
  const question = asked.ok ? firingForOf(draft.purpose, { basis: asked.basis, startC: draft.startC }) : null;
  const answer = question && planFiring(question);

  const save = async (segments: Parameters<typeof loggedSegments>[0]): Promise<void> => {
    if (!asked.ok) return;
    const id = door.moment().newId();
    const done = await door.log({
      do: "log",
      stream: streamOf("run", id),
      type: "run-planned",
      body: {
        kilnId: kiln?.listed?.id ?? null,
        purpose: draft.purpose,
        pieceIds: draft.pieceIds,
        startC: draft.startC,
        segments: loggedSegments(segments),
        basis: asked.basis,
        ...(draft.note.trim() === "" ? {} : { note: draft.note.trim() }),
      },
    });
    if (!done.ok) return;
    await form.drop();
    say("Plan saved.");
    onSaved(id);
  };

  return (
    <div className={sheet["stack"]}>
      <p className={styles["caution"]}>
        Dipbook does not control the kiln. It needs its own controller and limit, and a person on watch. Local
        codes and makers’ data sheets come first.
      </p>
      <div className={styles["screen"]}>
        <PlanChoices draft={draft} set={set} items={items} way={wayOf(draft, asked.together)} />
      </div>
      <div className={styles["screen"]}>
        <PlanKiln draft={draft} set={set} kilns={kilns} />
      </div>
      {asked.together !== null && (
        <div className={styles["screen"]}>
          <PlanFacts form={form} facts={facts} together={asked.together} preheatC={preheatC} />
        </div>
      )}
      {!asked.ok && (
        <Card title="Needed for a plan" tone="note">
          <ul>
            {asked.gaps.map((gap) => (
              <li key={gap}>{gapWords(format)[gap]}</li>
            ))}
          </ul>
        </Card>
      )}
      {answer?.kind === "refused" && (
        <Card title="No plan possible" tone="hold">
          <FindingBlock level="hold" text={scheduleRefusalText(answer, format)} />
        </Card>
      )}
      {answer?.kind === "plan" && asked.ok && (
        <PlanResult
          plan={answer}
          draft={draft}
          set={set}
          basis={asked.basis}
          kiln={kiln?.listed ?? null}
          names={chosen.map(({ standing }) => standing.piece.plan.name)}
          onSave={save}
        />
      )}
    </div>
  );
}
