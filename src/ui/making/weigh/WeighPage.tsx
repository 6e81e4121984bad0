import { useParams } from "wouter";
import { usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { WeighForm } from "./WeighForm.tsx";

/** One weighing: the number begins where the balance will most likely stand, the moment is guessed by the log. */
export function WeighPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  if (found === undefined) return <Page title="Weigh">{null}</Page>;
  if (found === null)
    return (
      <Page title="Weigh" back={paths.rack}>
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  const { item, around } = found;
  return <WeighForm key={id} item={item} around={around} />;
}
