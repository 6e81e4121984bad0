import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { Link } from "wouter";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt, Pour, Run } from "../../../logbook/fire/fireStates.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { dayTime } from "../../base/format/time.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { CoolingCard } from "./CoolingCard.tsx";
import { FixesCard } from "./FixesCard.tsx";
import { MomentField } from "./MomentField.tsx";
import { OrderCard } from "./OrderCard.tsx";
import { PlanHeat } from "./PlanHeat.tsx";
import { PlanShells } from "./PlanShells.tsx";
import { newPour, pourBody, pourDay, toldOf, type PourDraft } from "./pourDraft.ts";
import { bedOf, pourParts } from "./pourParts.ts";
import { clashWords } from "./pourStepWords.ts";
import { TracksChart } from "./TracksChart.tsx";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import styles from "./pour.module.css";

const ready = ["burnt-out", "fired", "preheated"];
const due = ["reviewed", "dewaxed", "burnout"];

/** Pieces that can be poured, hottest first, and those whose fire is still to come. */
export const mayPour = ({ standing: { piece, coatsDone } }: Pick<RackItem, "standing">): boolean =>
  !piece.archived && coatsDone > 0 && (ready.includes(piece.phase) || due.includes(piece.phase));

type From = {
  readonly rack: readonly RackItem[];
  readonly shop: Shop;
  readonly runs: readonly Run[];
  readonly melts: readonly Melt[];
  readonly pours: readonly Pour[];
};

type Asked = { readonly pieceIds: readonly string[]; readonly pourAt: number | null };

/** The pieces and the hour asked for: the same shells on another day are another plan. Drafts once had the pieces alone. */
function aboutOf({ pieceIds, pourAt }: Asked) {
  const pieces = pieceIds.join(" ");
  return pourAt === null ? pieces : { is: `${pieces} ${pourAt}`, was: pieces, given: { pourAt } };
}

export function PourPlanForm({
  from,
  asked,
  onPlanned,
}: {
  readonly from: From;
  readonly asked: Asked;
  readonly onPlanned: (id: string) => void;
}) {
  const { rack, shop, runs, melts, pours } = from;
  const door = useShop();
  const format = useFormat();
  const now = Math.max(useNow(), door.clock());
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<PourDraft>(
    "pour/new",
    { ...newPour(asked.pieceIds), pourAt: asked.pourAt },
    aboutOf(asked),
  );
  const { draft, set } = form;
  const pieces = rack.filter(mayPour);
  const items = draft.pieceIds.flatMap((id) => pieces.find(({ standing }) => standing.piece.id === id) ?? []);
  const parts = pourParts({
    items,
    run: runs.find(({ id }) => id === draft.runId) ?? null,
    melt: melts.find(({ id }) => id === draft.meltId) ?? null,
    melts: melts.filter(({ ended }) => ended !== null),
    shop,
    told: toldOf(draft),
  });
  const day = pourDay(draft, parts, now);
  const other = pours.find(({ pieceIds }) => pieceIds.some((id) => draft.pieceIds.includes(id)));
  const isPast = day.plan.startsAt < now - minuteMs;
  const reason =
    items.length === 0
      ? "Choose the shells first."
      : parts.alloy !== null && day.metalC < parts.alloy.liquidusC.value
        ? "The pouring temperature is below the liquidus."
        : day.plan.pourAt < now
          ? "The pour time is in the past."
          : null;

  const plan = async (): Promise<void> => {
    if (reason !== null) return;
    const id = door.moment().newId();
    const body = pourBody(draft, day);
    const done = await door.log({
      do: "log",
      stream: streamOf("pour", id),
      type: "pour-planned",
      body,
    });
    if (!done.ok) return;
    await form.drop();
    say("Pour planned.");
    onPlanned(id);
  };

  return (
    <div className={styles["sheet"]}>
      <FixesCard fixes={day.fixes} shellC={day.shellC} shells={parts.shells.length} />
      {other !== undefined && (
        <p className={styles["warn"]}>
          One of these shells is in another pour: <Link href={paths.pour(other.id)}>open it</Link>.
        </p>
      )}
      <div className={styles["columns"]}>
        <div className={styles["sheet"]}>
          <PlanShells form={form} pieces={pieces} parts={parts} />
          <PlanHeat form={form} parts={parts} day={day} runs={runs} melts={melts} />
        </div>
        <div className={styles["sheet"]}>
          <Card title="Pour time" tone="ember">
            <MomentField label="Day and time" at={day.plan.pourAt} onChange={(pourAt) => set({ pourAt })} />
            {isPast && (
              <div className={styles["stack"]}>
                <p className={styles["warn"]}>
                  It should have started {dayTime(day.plan.startsAt, now, format.locale)}. The earliest from
                  now is {dayTime(day.soonestAt, now, format.locale)}.
                </p>
                <div className={styles["keys"]}>
                  <Button onPress={() => set({ pourAt: day.soonestAt })}>Pour at the earliest</Button>
                </div>
              </div>
            )}
          </Card>
          <Card title="The day, counted back">
            <p>
              First to start: <strong>{dayTime(day.plan.startsAt, now, format.locale)}</strong>
            </p>
            <TracksChart plan={day.plan} steps={day.steps} now={null} />
            {day.plan.clashes.map((clash) => (
              <p key={`${clash.what} ${clash.fromAt}`} className={styles["warn"]}>
                {clashWords(clash, format)}
              </p>
            ))}
          </Card>
          {items.length > 0 && (
            <OrderCard parts={parts} order={day.order} metalC={day.metalC} carryMin={day.told.carryMin} />
          )}
          {items.length > 0 && (
            <CoolingCard
              shells={parts.shells}
              alloy={parts.alloy}
              figures={parts.figures}
              startC={day.shellC}
              metalC={day.metalC}
              carryMin={day.told.carryMin}
              place={bedOf(parts, { bed: draft.bed, sandC: day.sandC ?? undefined, family: draft.family })}
            />
          )}
          <Card>
            <TextOf form={form} at="note" label="Note" multiline />
            <Button kind="primary" size="big" disabledReason={reason} onPress={plan}>
              Plan this pour
            </Button>
          </Card>
        </div>
      </div>
    </div>
  );
}
