import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { isPutAway, type Melt } from "../../../logbook/fire/fireStates.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFigures, useMelts } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { meltTitle } from "../metal/meltWords.ts";
import { FireSection, type FireLine } from "./FireSection.tsx";

export function MeltsSection() {
  const format = useFormat();
  const melts = useMelts();
  const shop = useFigures() ?? builtInShop;
  return (
    <FireSection
      title="Melts"
      none="No melt yet. Plan one for charge, heat and time."
      plan={{ href: paths.newMelt, label: "Plan a melt" }}
      lines={melts?.map((melt) => lineOf(melt, { shop, format }))}
    />
  );
}

function lineOf(melt: Melt, { shop, format }: { readonly shop: Shop; readonly format: Format }): FireLine {
  const { id, plan, startedAt, readings, ended, lastAt } = melt;
  const last = readings.at(-1);
  return {
    id,
    href: paths.melt(id),
    title: meltTitle(melt, { shop, format }),
    state: ended !== null ? "ended" : startedAt !== null ? "under way" : "planned",
    word: isPutAway(melt) ? "cancelled" : undefined,
    says: (
      <>
        {ended !== null && !isPutAway(melt)
          ? `poured ${format.show("kg", ended.pouredKg)}`
          : last === undefined
            ? `to pour at ${format.show("temp", plan.pourC)}`
            : `${format.show("temp", last.metalC)} of ${format.show("temp", plan.pourC)}`}
        , <Ago at={lastAt} />
      </>
    ),
  };
}
