import { Link, useLocation, useParams } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import css from "./StartPage.module.css";
import type { Command } from "../../../logbook/log/command.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { PlanCore } from "./PlanCore.tsx";
import { PlanMetal } from "./PlanMetal.tsx";
import { PlanPattern } from "./PlanPattern.tsx";
import { PlanShell } from "./PlanShell.tsx";
import { changesBetween, draftOfPlan, planFields, readPlan } from "./planForm.ts";

/** All that can be known of a piece before it is poured. Nothing here is required. */
export function PlanPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  if (found === undefined) return <Page title="Plan">{null}</Page>;
  if (found === null)
    return (
      <Page title="Plan" back={paths.rack}>
        <Empty title="No such piece">
          <p>
            It is not in this device's log. <Link href={paths.newPiece}>Start a piece</Link>
          </p>
        </Empty>
      </Page>
    );
  return <PlanForm key={id} standing={found.item.standing} />;
}

function PlanForm({ standing }: { readonly standing: Standing }) {
  const { piece } = standing;
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const room = piece.rooms.at(-1)?.roomId ?? null;
  const form = useEntryForm(`plan/${piece.id}`, planFields, {
    start: draftOfPlan(piece.plan, room),
    check: readPlan,
  });
  const stream = streamOf("piece", piece.id);

  const save = () =>
    form.save(
      async ({ plan, roomId }) => {
        const changes = changesBetween(piece.plan, plan);
        const commands: Command[] = [];
        if (Object.keys(changes).length > 0)
          commands.push({ do: "log", stream, type: "piece-changed", body: { changes } });
        if (roomId !== null && roomId !== room)
          commands.push({ do: "log", stream, type: "piece-moved", body: { roomId } });
        return commands.length === 0 ? { ok: true, entries: [] } : shop.logAll(commands, { quiet: true });
      },
      () => {
        say("Plan saved.");
        goTo(paths.piece(piece.id), { replace: true });
      },
    );

  return (
    <Page title="Plan" back={paths.piece(piece.id)}>
      <form
        className={`${sheet["stack"]} ${css["form"]} ${css["columns"]}`}
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <p className={sheet["pale"]}>
          Nothing here is required. Each number says what it is for. You are asked for it when a check needs
          it.
        </p>
        <div className={`${sheet["stack"]} ${css["cards"]}`}>
          <PlanPattern form={form} />
          <PlanShell form={form} standing={standing} />
          <PlanMetal form={form} />
          <PlanCore form={form} />
        </div>
        <Refused form={form} notYet="Not saved yet" />
        <Button kind="primary" size="big" onPress={() => void save()}>
          Save the plan
        </Button>
        <p className={`${sheet["row"]} ${sheet["middle"]} ${sheet["between"]} ${css["foot"]}`}>
          <Link href={paths.piece(piece.id)}>Later: go to the piece</Link>
          {form.isChanged && (
            <Button kind="quiet" onPress={form.restart}>
              Undo what is not saved
            </Button>
          )}
        </p>
      </form>
    </Page>
  );
}
