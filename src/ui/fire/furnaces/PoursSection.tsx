import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { useNow } from "../../base/state/useNow.ts";
import { usePours } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { FireSection, type FireLine } from "./FireSection.tsx";

export function PoursSection() {
  const { locale } = useFormat();
  const now = useNow();
  const pours = usePours();
  return (
    <FireSection
      title="Pours"
      none="No pour yet. A plan counts back from the pour time."
      plan={{ href: paths.newPour, label: "Plan a pour" }}
      lines={pours?.map((pour) => lineOf(pour, dayTime(pour.ended?.at ?? pour.plan.pourAt, now, locale)))}
    />
  );
}

function lineOf({ id, pieceIds, marks, decided, ended }: Pour, when: string): FireLine {
  const isBegun = marks.length > 0 || decided !== null;
  const shells = pieceIds.length === 1 ? "1 shell" : `${pieceIds.length} shells`;
  return {
    id,
    href: paths.pour(id),
    title: `Pour of ${shells}`,
    state: ended !== null ? "ended" : isBegun ? "under way" : "planned",
    word: ended?.dropped === true ? "cancelled" : undefined,
    says: when,
  };
}
